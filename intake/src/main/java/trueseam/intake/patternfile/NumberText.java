package trueseam.intake.patternfile;

import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as SVG writes them (SVG 1.1, second edition, 4.2), finite ones only. */
final class NumberText {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

    /** No number of a drawing is written longer. */
    private static final int LONGEST = 400;

    private NumberText() {}

    /** The number, or nothing if the text is none or none that is finite. */
    static Optional<Double> parse(String text) {
        String plain = text.strip();
        if (plain.length() > LONGEST || !NUMBER.matcher(plain).matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(plain);
        return Math.abs(value) <= Double.MAX_VALUE ? Optional.of(value) : Optional.empty();
    }

    /** A text short enough to repeat in a sentence, on one line. */
    static String shortened(String text) {
        String line = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        return line.length() <= 40 ? line : line.substring(0, 40) + "...";
    }
}
