package trueseam.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.garment.finding.Finding;

/** Text files damaged at random, by a seed, and what a reader of drawings may answer to one. */
public final class Damage {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final List<String> NUMBERS = List.of(
            "1e308",
            "-1e308",
            "1e400",
            "NaN",
            "Infinity",
            "-0",
            "0",
            "1e-320",
            "2147483648",
            "-1",
            "999999999999",
            "0x10",
            "1d",
            "",
            "1e6");

    private Damage() {}

    /**
     * A damaged file.
     *
     * @param whole the file as it was
     * @param seed says which damage
     * @return its bytes
     */
    public static byte[] of(byte[] whole, int seed) {
        Random random = new Random(seed);
        byte[] bytes = whole.clone();
        switch (seed % 5) {
            case 0 -> bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
            case 1 -> {
                for (int i = 1 + random.nextInt(20); i > 0; i--) {
                    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                }
            }
            case 2 -> bytes = numbers(bytes, random);
            case 3 -> bytes = lines(bytes, random);
            default -> {
                int from = random.nextInt(bytes.length);
                int to = from + random.nextInt(bytes.length - from);
                for (int i = from; i < Math.min(to, from + 60); i++) {
                    bytes[i] = (byte) (32 + random.nextInt(95));
                }
            }
        }
        return bytes;
    }

    private static byte[] numbers(byte[] bytes, Random random) {
        Matcher number = NUMBER.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        double share = random.nextBoolean() ? 0.3 : 0.01;
        return number.replaceAll(
                        m -> random.nextDouble() < share ? NUMBERS.get(random.nextInt(NUMBERS.size())) : m.group())
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] lines(byte[] bytes, Random random) {
        List<String> lines =
                new ArrayList<>(Arrays.asList(new String(bytes, StandardCharsets.ISO_8859_1).split("(?<=[\n;])")));
        for (int i = 1 + random.nextInt(10); i > 0; i--) {
            String moved = lines.remove(random.nextInt(lines.size()));
            for (int copies = random.nextInt(3); copies > 0; copies--) {
                lines.add(random.nextInt(lines.size()), moved);
            }
        }
        return String.join("", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    /**
     * Holds a reader to one clear sentence, or a drawing whose findings are sentences.
     *
     * @param bytes the file
     * @param what for messages
     * @param reader reads it
     * @return whether a drawing was read
     */
    public static boolean isRead(byte[] bytes, String what, Function<byte[], Drawing> reader) {
        try {
            Drawing drawing = reader.apply(bytes);
            assertThat(drawing.findings())
                    .as(what)
                    .hasSizeLessThan(200)
                    .extracting(Finding::sentence)
                    .allSatisfy(s ->
                            assertThat(s).endsWith(".").doesNotContain("\n").hasSizeLessThan(600));
            return true;
        } catch (DrawingException refused) {
            assertThat(refused.getMessage())
                    .as(what)
                    .startsWith("x.")
                    .endsWith(".")
                    .doesNotContain("\n")
                    .hasSizeLessThan(400);
            return false;
        }
    }
}
