package trueseam.intake.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and lengths. Source: CSS 2.1, 4.3.2 (1 in = 2.54 cm = 96 px = 72 pt = 6 pc). */
final class Units {

    private static final Map<String, Double> PX = Map.of(
            "",
            1.0,
            "px",
            1.0,
            "mm",
            96 / 25.4,
            "cm",
            960 / 25.4,
            "in",
            96.0,
            "pt",
            96 / 72.0,
            "pc",
            16.0,
            "q",
            96 / 101.6);

    private static final Pattern LENGTH =
            Pattern.compile("\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*([a-zA-Z%]*)\\s*");

    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");

    /** No length has more characters, with room for twenty digits and an exponent. */
    private static final int LONGEST = 60;

    private Units() {}

    /** A length in user units (px where a unit is named); of the whole for a percentage. */
    static OptionalDouble length(String text, double whole) {
        Matcher length = LENGTH.matcher(text);
        if (text.length() > LONGEST || !length.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(length.group(1));
        String unit = length.group(2).toLowerCase(java.util.Locale.ROOT);
        if (unit.equals("%")) {
            return finite(number / 100 * whole);
        }
        return PX.containsKey(unit) ? finite(number * PX.get(unit)) : OptionalDouble.empty();
    }

    private static OptionalDouble finite(double value) {
        return Math.abs(value) <= 1e9 ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Whether a length names a unit that is the same everywhere. */
    static boolean isTrue(String text) {
        Matcher length = LENGTH.matcher(text);
        return text.length() <= LONGEST
                && length.matches()
                && List.of("mm", "cm", "in", "pt", "pc", "q")
                        .contains(length.group(2).toLowerCase(java.util.Locale.ROOT));
    }

    /** All numbers of a list; nothing if anything else stands between them. */
    static Optional<List<Double>> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        int at = 0;
        while (number.find()) {
            if (!text.substring(at, number.start()).matches("[\\s,]*")) {
                return Optional.empty();
            }
            double value = Double.parseDouble(number.group());
            if (!(Math.abs(value) <= 1e9)) {
                return Optional.empty();
            }
            numbers.add(value);
            at = number.end();
        }
        return text.substring(at).isBlank() ? Optional.of(numbers) : Optional.empty();
    }
}
