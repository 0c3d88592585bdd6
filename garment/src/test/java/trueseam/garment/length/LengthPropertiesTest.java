package trueseam.garment.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of reading and showing, over seeded lengths; the seed is the test's argument. */
class LengthPropertiesTest {
    private static final LengthFormat[] FORMATS = {
        LengthFormat.inches(8), LengthFormat.inches(16), LengthFormat.centimetres(), LengthFormat.millimetres()
    };

    static Stream<Long> seeds() {
        return LongStream.rangeClosed(1, 500).boxed();
    }

    /** Lengths of a garment, small ones, ones on and beside the halves where rounding turns, of either sign. */
    private static double length(Random random) {
        double mm =
                switch (random.nextInt(4)) {
                    case 0 -> random.nextDouble() * 2000;
                    case 1 -> random.nextDouble() * 3;
                    case 2 -> random.nextInt(2000) * 25.4 / 32;
                    default -> Math.nextUp(random.nextInt(4000) * 0.5);
                };
        return random.nextBoolean() ? mm : -mm;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void readingIsTheInverseOfShowingWithinHalfAStep(long seed) {
        Random random = new Random(seed);
        double mm = length(random);
        for (LengthFormat format : FORMATS) {
            double read = Length.parse(format.show(mm), LengthUnit.INCH).mm();
            assertThat(read).as("%s mm in %s", mm, format).isCloseTo(mm, within(format.stepMm() / 2 + 1e-9));
            assertThat(Length.parse(format.number(mm), format.unit()).mm()).isEqualTo(read);
            assertThat(Length.parse(format.showSigned(mm), LengthUnit.INCH).mm())
                    .isEqualTo(read);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void showingWhatWasReadChangesNothingMore(long seed) {
        double mm = length(new Random(seed));
        for (LengthFormat format : FORMATS) {
            String shown = format.show(mm);
            assertThat(format.show(Length.parse(shown, LengthUnit.INCH))).isEqualTo(shown);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aLengthAndItsOppositeAreShownAlike(long seed) {
        double mm = Math.abs(length(new Random(seed)));
        for (LengthFormat format : FORMATS) {
            String shown = format.show(mm);
            assertThat(format.show(-mm)).isEqualTo(shown.startsWith("0 ") ? shown : "-" + shown);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyTextIsALengthOrRefusedInWords(long seed) {
        Random random = new Random(seed);
        String signs = "0123456789 ./,-+'\"½incmft\u2033e#";
        StringBuilder text = new StringBuilder();
        int count = random.nextInt(80);
        for (int i = 0; i < count; i++) {
            text.append(signs.charAt(random.nextInt(signs.length())));
        }
        try {
            assertThat(Length.parse(text.toString(), LengthUnit.INCH).mm()).isFinite();
        } catch (LengthTextException e) {
            assertThat(e.reason()).isNotBlank();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everySpellingOfAFractionIsTheSameLength(long seed) {
        Random random = new Random(seed);
        int below = 1 << (1 + random.nextInt(4));
        int above = 1 + random.nextInt(below - 1);
        int whole = 1 + random.nextInt(80);
        // Sixteenths of an inch have finite decimals, so all spellings are exact.
        double mm = Length.parse(whole + " " + above + "/" + below + " in", LengthUnit.CENTIMETRE)
                .mm();
        String decimal = Double.toString(whole + (double) above / below);
        assertThat(Length.parse(decimal + "\"", LengthUnit.CENTIMETRE).mm()).isEqualTo(mm);
        assertThat(Length.parse(decimal.replace('.', ',') + " inch", LengthUnit.CENTIMETRE)
                        .mm())
                .isEqualTo(mm);
        assertThat(Length.parse(whole + "-" + above + "/" + below, LengthUnit.INCH)
                        .mm())
                .isEqualTo(mm);
        assertThat(Length.ofInches(whole + (double) above / below).mm()).isEqualTo(mm);
    }
}
