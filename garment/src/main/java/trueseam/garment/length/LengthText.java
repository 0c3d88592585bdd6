package trueseam.garment.length;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads written lengths. Numbers are kept as a fraction of whole numbers until the last step, so that {@code 37 1/3 in}
 * is rounded only once.
 */
final class LengthText {
    /** More than any garment; beyond it a slip of the key is certain, and sums of squares stay exact enough below. */
    private static final double LONGEST_MM = 1e7;

    /** Room for a double written in full with its unit; a whole page pasted into a cell is not read at all. */
    private static final int LONGEST_TEXT = 60;

    private static final Map<Character, String> FRACTIONS = Map.ofEntries(
            Map.entry('½', "1/2"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"),
            Map.entry('¼', "1/4"),
            Map.entry('¾', "3/4"),
            Map.entry('⅕', "1/5"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"));

    private static final String NUMBER = "(?:(\\d+(?:[.,]\\d+)?|[.,]\\d+)(?![/\\d]))?(?:[ -]?(\\d+)/(\\d+))?";
    private static final Pattern PLAIN = Pattern.compile(NUMBER + " ?([a-z\"'.]*)");
    private static final Pattern FEET =
            Pattern.compile("(\\d+) ?(?:ft\\.?|feet|foot|')(?: ?" + NUMBER + " ?(in|inch|inches|\")?)?");
    private static final Pattern BLANKS = Pattern.compile(" +");
    private static final Pattern AROUND_SLASH = Pattern.compile(" ?/ ?");
    private static final Pattern AFTER_MINUS = Pattern.compile("- (?=\\d)");

    private LengthText() {}

    /** The double nearest to a number of units; the number is taken as its shortest decimal form. */
    static double exactMm(double number, LengthUnit unit) {
        return BigDecimal.valueOf(number)
                .multiply(BigDecimal.valueOf(unit.mm()))
                .doubleValue();
    }

    static double mm(String text, LengthUnit bareUnit) {
        if (text.length() > LONGEST_TEXT) {
            throw new LengthTextException(text.substring(0, LONGEST_TEXT) + "...", "it is too long");
        }
        String plain = spellOut(text);
        if (plain.isEmpty()) {
            throw new LengthTextException(text, "nothing is written");
        }
        boolean negative = plain.startsWith("-");
        String unsigned = negative || plain.startsWith("+") ? plain.substring(1).strip() : plain;
        Matcher feet = FEET.matcher(unsigned);
        double mm;
        if (feet.matches()) {
            Ratio inches = Ratio.of(feet.group(1)).times(12);
            if (feet.group(2) != null || feet.group(3) != null || feet.group(5) != null) {
                inches = inches.plus(number(text, feet.group(2), feet.group(3), feet.group(4)));
            }
            mm = inches.times(new BigDecimal("25.4"));
        } else {
            Matcher plainNumber = PLAIN.matcher(unsigned);
            if (!plainNumber.matches()) {
                throw new LengthTextException(text, "a number and a unit were expected");
            }
            Ratio number = number(text, plainNumber.group(1), plainNumber.group(2), plainNumber.group(3));
            mm = number.times(unitMm(text, plainNumber.group(4), bareUnit));
        }
        if (mm > LONGEST_MM) {
            throw new LengthTextException(text, "it is longer than 10 km");
        }
        return negative ? -mm : mm;
    }

    /** Lower case, plain signs for the many signs of minus, inch, foot and slash, fractions spelt out, single blanks. */
    private static String spellOut(String text) {
        StringBuilder plain = new StringBuilder();
        for (char c : text.toLowerCase(Locale.ROOT).toCharArray()) {
            String fraction = FRACTIONS.get(c);
            if (fraction != null) {
                plain.append(' ').append(fraction);
            } else {
                plain.append(
                        switch (c) {
                            case '−', '–' -> '-';
                            case '″', '”', '“' -> '"';
                            case '′', '’', '‘' -> '\'';
                            case '⁄', '∕' -> '/';
                            case '\u00a0', '\u202f', '\u2009', '\t' -> ' ';
                            default -> c;
                        });
            }
        }
        String signs = plain.toString().replace("''", "\"").strip();
        String single = BLANKS.matcher(signs).replaceAll(" ");
        return AFTER_MINUS.matcher(AROUND_SLASH.matcher(single).replaceAll("/")).replaceAll("-");
    }

    private static Ratio number(String text, String whole, String numerator, String denominator) {
        if (whole == null && numerator == null) {
            throw new LengthTextException(text, "the number is missing");
        }
        Ratio value = whole == null ? Ratio.of("0") : Ratio.of(whole.replace(',', '.'));
        if (numerator == null) {
            return value;
        }
        if (whole != null && !whole.chars().allMatch(Character::isDigit)) {
            throw new LengthTextException(text, "a decimal and a fraction stand side by side");
        }
        BigInteger below = new BigInteger(denominator);
        if (below.signum() == 0) {
            throw new LengthTextException(text, "the fraction is over zero");
        }
        if (new BigInteger(numerator).compareTo(below) >= 0) {
            // 11/2 is more often a forgotten blank than five and a half.
            throw new LengthTextException(text, "the fraction is not below one");
        }
        return value.plus(new Ratio(new BigDecimal(numerator), below));
    }

    private static BigDecimal unitMm(String text, String unit, LengthUnit bareUnit) {
        Optional<BigDecimal> mm =
                switch (unit.endsWith(".") ? unit.substring(0, unit.length() - 1) : unit) {
                    case "" -> Optional.of(BigDecimal.valueOf(bareUnit.mm()));
                    case "in", "inch", "inches", "\"" -> Optional.of(new BigDecimal("25.4"));
                    case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> Optional.of(BigDecimal.TEN);
                    case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> Optional.of(BigDecimal.ONE);
                    case "m", "metre", "metres", "meter", "meters" -> Optional.of(new BigDecimal("1000"));
                    default -> Optional.empty();
                };
        return mm.orElseThrow(() -> new LengthTextException(text, "the unit \"" + unit + "\" is not known"));
    }

    /** A non-negative fraction: {@code above / below}. */
    private record Ratio(BigDecimal above, BigInteger below) {
        static Ratio of(String decimal) {
            return new Ratio(new BigDecimal(decimal), BigInteger.ONE);
        }

        Ratio plus(Ratio other) {
            return new Ratio(
                    above.multiply(new BigDecimal(other.below)).add(other.above.multiply(new BigDecimal(below))),
                    below.multiply(other.below));
        }

        Ratio times(int number) {
            return new Ratio(above.multiply(BigDecimal.valueOf(number)), below);
        }

        double times(BigDecimal unit) {
            // 40 digits: far more than a double holds, so the one rounding that matters is the last.
            return above.multiply(unit)
                    .divide(new BigDecimal(below), new MathContext(40))
                    .doubleValue();
        }
    }
}
