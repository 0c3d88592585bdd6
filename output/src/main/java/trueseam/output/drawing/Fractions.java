package trueseam.output.drawing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sets fractions as the trade writes them: {@code 37 1/2 in} as 37½ in, {@code 3/16} with raised and lowered figures.
 *
 * <p>Only for showing; what is set so is not meant to be read back.
 */
public final class Fractions {

    private static final Pattern PLAIN = Pattern.compile("(?<![\\d/.,])((\\d+) )?(\\d{1,2})/(2|4|8|16)(?![\\d/])");
    private static final String RAISED = "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

    private Fractions() {}

    /**
     * The text with its fractions set.
     *
     * @param text for example {@code add 5/8 in}
     * @return for example {@code add ⅝ in}
     */
    public static String set(String text) {
        if (text.indexOf('/') < 0) {
            return text;
        }
        Matcher m = PLAIN.matcher(text);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            String whole = m.group(2) == null ? "" : m.group(2);
            m.appendReplacement(out, whole + fraction(m.group(3), m.group(4)));
        }
        return m.appendTail(out).toString();
    }

    private static String fraction(String above, String below) {
        return switch (above + "/" + below) {
            case "1/2" -> "\u00bd";
            case "1/4" -> "\u00bc";
            case "3/4" -> "\u00be";
            case "1/8" -> "\u215b";
            case "3/8" -> "\u215c";
            case "5/8" -> "\u215d";
            case "7/8" -> "\u215e";
            default -> raised(above) + "\u2044" + lowered(below);
        };
    }

    private static String raised(String figures) {
        StringBuilder out = new StringBuilder();
        figures.chars().forEach(c -> out.append(RAISED.charAt(c - '0')));
        return out.toString();
    }

    private static String lowered(String figures) {
        StringBuilder out = new StringBuilder();
        figures.chars().forEach(c -> out.append((char) ('\u2080' + c - '0')));
        return out.toString();
    }
}
