package trueseam.output.words;

import java.util.regex.Pattern;

/** Keeps what must be read together on one line: {@code 3 3/4 in} and {@code 952 mm}. */
public final class Unbroken {

    /** A blank at which no line is broken. */
    public static final char BLANK = '\u00a0';

    private static final Pattern BEFORE_FRACTION = Pattern.compile("(?<=\\d) (?=\\d+/\\d)");
    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=(in|cm|mm|degrees)\\b)");

    private Unbroken() {}

    /**
     * The text with its lengths kept together.
     *
     * @param text any text with lengths
     * @return the same with blanks inside lengths that do not break
     */
    public static String lengths(String text) {
        String blank = String.valueOf(BLANK);
        return BEFORE_UNIT
                .matcher(BEFORE_FRACTION.matcher(text).replaceAll(blank))
                .replaceAll(blank);
    }
}
