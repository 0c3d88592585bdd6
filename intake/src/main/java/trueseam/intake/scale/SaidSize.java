package trueseam.intake.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.garment.length.LengthUnit;

/**
 * A printed dimension.
 *
 * @param text as it is written
 * @param sizes what it may name, each with how exactly: "1 in / 2.5 cm" names two, of which neither is exactly the other
 * @param named whether words say that it is for checking the scale
 */
record SaidSize(String text, List<Size> sizes, boolean named) {

    private static final String NUMBER =
            "(\\d+(?:[.,]\\d+)?(?:[\\s-]+\\d+/\\d+)?\\s?[\u00bc\u00bd\u00be\u215b\u215c\u215d\u215e]?|\\d+/\\d+|[\u00bc\u00bd\u00be])";
    private static final String UNIT =
            "(mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?|inch(?:es)?|in\\b\\.?|\"|\u201d|\u2033|'')";
    private static final Pattern LENGTH = Pattern.compile(NUMBER + "\\s*" + UNIT, Pattern.CASE_INSENSITIVE);
    private static final Pattern PAIR = Pattern.compile(
            NUMBER + "\\s*" + UNIT + "?\\s*(?:x|\u00d7|by)\\s*" + NUMBER + "\\s*" + UNIT, Pattern.CASE_INSENSITIVE);
    private static final Pattern NAMED = Pattern.compile("(?i)\\b(test|scale|square|check|control|ruler|measures?)\\b");
    private static final Pattern FILLING = Pattern.compile(
            "(?i)\\b(test|scale|square|check|control|ruler|measures?|should|must|this|box|each|side|print(?:ed)?|at|a|the|is|"
                    + "be|to|of|and|or|by|x)\\b|100\\s*%|[\\s.,:;/=()\\[\\]\u00d7|-]");

    private static final String FRACTIONS = "\u00bc\u00bd\u00be\u215b\u215c\u215d\u215e";
    private static final double[] VALUES = {0.25, 0.5, 0.75, 0.125, 0.375, 0.625, 0.875};

    /**
     * One size.
     *
     * @param acrossMm across, mm
     * @param upMm up, mm; the same where only one is named
     * @param exactMm half of the last digit that is written, mm
     */
    record Size(double acrossMm, double upMm, double exactMm) {}

    /** A longer text says other things too. */
    private static final int LONGEST = 80;

    /** Does not change. */
    SaidSize {
        sizes = List.copyOf(sizes);
    }

    /** Reads a text that names a size and hardly anything else; nothing where it says other things, such as an allowance. */
    static Optional<SaidSize> of(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        boolean named = NAMED.matcher(text).find();
        String rest = LENGTH.matcher(PAIR.matcher(text).replaceAll(" ")).replaceAll(" ");
        boolean whole = FILLING.matcher(rest).replaceAll("").isEmpty();
        List<Size> sizes = new ArrayList<>();
        Matcher pairs = PAIR.matcher(text);
        while (pairs.find()) {
            double unit = unitMm(pairs.group(4));
            double first = pairs.group(2) == null ? unit : unitMm(pairs.group(2));
            sizes.add(new Size(
                    number(pairs.group(1)) * first, number(pairs.group(3)) * unit, exact(pairs.group(3)) * unit));
        }
        Matcher lengths = LENGTH.matcher(PAIR.matcher(text).replaceAll(" "));
        while (lengths.find()) {
            double unit = unitMm(lengths.group(2));
            double mm = number(lengths.group(1)) * unit;
            sizes.add(new Size(mm, mm, exact(lengths.group(1)) * unit));
        }
        sizes.removeIf(s -> !(s.acrossMm > 1 && s.upMm > 1));
        return sizes.isEmpty() || !(whole || named) ? Optional.empty() : Optional.of(new SaidSize(text, sizes, named));
    }

    private static double unitMm(String unit) {
        String word = unit.toLowerCase(Locale.ROOT);
        return word.startsWith("mm") || word.startsWith("milli")
                ? LengthUnit.MILLIMETRE.mm()
                : word.startsWith("c") ? LengthUnit.CENTIMETRE.mm() : LengthUnit.INCH.mm();
    }

    private static double number(String text) {
        double sum = 0;
        String rest = text.replace(',', '.');
        for (int i = 0; i < FRACTIONS.length(); i++) {
            if (rest.indexOf(FRACTIONS.charAt(i)) >= 0) {
                sum += VALUES[i];
                rest = rest.replace(FRACTIONS.substring(i, i + 1), "");
            }
        }
        for (String word : rest.strip().split("[\\s-]+")) {
            String[] sides = word.split("/");
            if (sides.length == 2) {
                sum += Double.parseDouble(sides[0]) / Double.parseDouble(sides[1]);
            } else if (!word.isEmpty()) {
                sum += Double.parseDouble(word);
            }
        }
        return Double.isFinite(sum) ? sum : 0;
    }

    /** Half of the last digit; a fraction and a whole number of inches are meant exactly. */
    private static double exact(String text) {
        int point = Math.max(text.indexOf('.'), text.indexOf(','));
        return point < 0 ? 0.5 : 0.5 * Math.pow(10, point - text.strip().length() + 1);
    }
}
