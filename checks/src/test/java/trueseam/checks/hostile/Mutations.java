package trueseam.checks.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages a whole file in one of many ways, by a seed: the same seed does the same. */
final class Mutations {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern TAG = Pattern.compile("<[a-zA-Z][^<>]*>");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
    private static final String[] NUMBERS = {
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
        "",
        "1e6",
        "1000000000",
        "1e9",
        "0.0000001",
        "12345678901234567890",
        "..",
        "1e",
        "-"
    };
    private static final String[] WORDS = {
        "rotate(1e9)",
        "scale(1e9)",
        "scale(0)",
        "scale(1e-9)",
        "matrix(1e300 0 0 1e300 0 0)",
        "matrix(0 0 0 0 0 0)",
        "skewX(90)",
        "translate(1e9 -1e9)",
        "none",
        "#a",
        "&#0;",
        "&a;",
        "\u0000",
        "\ud800",
        "M0 0",
        "M0 0A1e9 1e-9 0 1 1 1 1z",
        "M0 0L0 0z",
        "1 2 3"
    };

    private final byte[] whole;
    private final SplittableRandom random;

    private Mutations(byte[] whole, long seed) {
        this.whole = whole;
        this.random = new SplittableRandom(seed);
    }

    static byte[] of(byte[] whole, long seed) {
        Mutations mutations = new Mutations(whole, seed);
        byte[] bytes = mutations.once(whole);
        return mutations.random.nextInt(3) == 0 && bytes.length > 0 ? mutations.once(bytes) : bytes;
    }

    private byte[] once(byte[] bytes) {
        return switch (random.nextInt(9)) {
            case 0 -> Arrays.copyOf(bytes, random.nextInt(bytes.length));
            case 1 -> flipped(bytes);
            case 2 -> replaced(bytes, NUMBER, NUMBERS, random.nextBoolean() ? 0.3 : 0.01);
            case 3 -> moved(bytes);
            case 4 -> overwritten(bytes);
            case 5 -> replaced(bytes, QUOTED, WORDS, 0.05);
            case 6 -> nested(bytes);
            case 7 -> scaled(bytes);
            default -> spliced(bytes);
        };
    }

    private byte[] flipped(byte[] bytes) {
        byte[] damaged = bytes.clone();
        for (int i = 1 + random.nextInt(20); i > 0; i--) {
            damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return damaged;
    }

    private byte[] overwritten(byte[] bytes) {
        byte[] damaged = bytes.clone();
        int from = random.nextInt(damaged.length);
        for (int i = from; i < Math.min(damaged.length, from + 1 + random.nextInt(80)); i++) {
            damaged[i] = (byte) random.nextInt(256);
        }
        return damaged;
    }

    private byte[] replaced(byte[] bytes, Pattern what, String[] by, double share) {
        return bytes(what.matcher(text(bytes)).replaceAll(m -> Matcher.quoteReplacement(with(m, by, share))));
    }

    private String with(MatchResult found, String[] by, double share) {
        if (random.nextDouble() >= share) {
            return found.group();
        }
        String word = by[random.nextInt(by.length)];
        return found.group().startsWith("\"") ? "\"" + word + "\"" : word;
    }

    /** Every number times one factor: a pattern for a giant or a flea. */
    private byte[] scaled(byte[] bytes) {
        double factor = Math.pow(10, random.nextDouble(-6, 6));
        return bytes(NUMBER.matcher(text(bytes))
                .replaceAll(m ->
                        m.group().length() > 12 ? m.group() : Double.toString(Double.parseDouble(m.group()) * factor)));
    }

    /** Lines or elements taken out, put elsewhere, and doubled. */
    private byte[] moved(byte[] bytes) {
        List<String> parts = new ArrayList<>(Arrays.asList(text(bytes).split("(?<=[\\n;>])")));
        for (int i = 1 + random.nextInt(10); i > 0 && parts.size() > 1; i--) {
            String part = parts.remove(random.nextInt(parts.size()));
            for (int copies = random.nextInt(4); copies > 0; copies--) {
                parts.add(random.nextInt(parts.size()), part);
            }
        }
        return bytes(String.join("", parts));
    }

    /** A tag repeated many times: nesting, or the same line drawn again and again. */
    private byte[] nested(byte[] bytes) {
        String text = text(bytes);
        List<MatchResult> tags = TAG.matcher(text).results().toList();
        if (tags.isEmpty()) {
            int at = random.nextInt(bytes.length);
            int end = Math.min(bytes.length, at + 1 + random.nextInt(400));
            return bytes(text.substring(0, at)
                    + text.substring(at, end).repeat(1 + random.nextInt(300))
                    + text.substring(end));
        }
        MatchResult tag = tags.get(random.nextInt(tags.size()));
        String many = tag.group().repeat(1 + random.nextInt(tag.group().length() < 200 ? 2000 : 30));
        return bytes(text.substring(0, tag.start()) + many + text.substring(tag.start()));
    }

    /** The head of the file with the tail of the same file from another place. */
    private byte[] spliced(byte[] bytes) {
        int from = random.nextInt(bytes.length);
        int to = random.nextInt(bytes.length);
        byte[] damaged = Arrays.copyOf(bytes, from + bytes.length - to);
        System.arraycopy(bytes, to, damaged, from, bytes.length - to);
        return damaged.length == 0 ? whole : damaged;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
