package trueseam.intake.patternfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether one user unit of the drawing is one millimetre: width and height against the viewBox. Source: SVG 1.1 (second
 * edition), 7.2 and 7.7; CSS 2.1, 4.3.2 for lengths (1 in = 2.54 cm = 96 px = 72 pt = 6 pc).
 */
final class SheetScale {

    private static final Map<String, Double> MM =
            Map.of("mm", 1.0, "cm", 10.0, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6, "px", 25.4 / 96, "", 25.4 / 96);

    private static final Pattern LENGTH = Pattern.compile("\\s*([^a-zA-Z%\\s]+(?:[eE][+-]?\\d+)?)\\s*([a-zA-Z%]*)\\s*");

    /** Editors round width and height to a few digits. A printed scale must be true to 0.1 %. */
    private static final double ROUNDING = 1e-4;

    private SheetScale() {}

    /** Refuses a drawing at another scale; remarks on one that does not say. */
    static void check(SvgNode root, Reading reading) {
        Optional<List<Double>> box = root.attribute("viewBox").map(text -> viewBox(text, root, reading));
        Optional<Double> width = root.attribute("width").flatMap(SheetScale::millimetres);
        Optional<Double> height = root.attribute("height").flatMap(SheetScale::millimetres);
        if (width.isEmpty() && height.isEmpty()) {
            reading.warn(
                    root,
                    "drawing",
                    "It has no width and height in mm, so other programs cannot show it at true scale; one user unit"
                            + " is taken as 1 mm.");
            return;
        }
        // Without a viewBox a user unit is a px.
        width.ifPresent(
                mm -> check(root, reading, "width", mm, box.map(b -> b.get(2)).orElse(mm / MM.get("px"))));
        height.ifPresent(
                mm -> check(root, reading, "height", mm, box.map(b -> b.get(3)).orElse(mm / MM.get("px"))));
    }

    private static void check(SvgNode root, Reading reading, String side, double mm, double units) {
        if (!(Math.abs(mm / units - 1) <= ROUNDING)) {
            throw reading.refused(
                    root,
                    "drawing",
                    "Its " + side + " is " + mm + " mm for " + units
                            + " user units; expected 1 mm for each user unit; set the viewBox to the size in mm, or"
                            + " scale the drawing to it.");
        }
    }

    private static List<Double> viewBox(String text, SvgNode root, Reading reading) {
        List<Optional<Double>> numbers = List.of(text.strip().split("\\s*,\\s*|\\s+", -1)).stream()
                .map(NumberText::parse)
                .toList();
        boolean good = numbers.size() == 4
                && numbers.stream().allMatch(Optional::isPresent)
                && numbers.get(2).orElse(0.0) > 0
                && numbers.get(3).orElse(0.0) > 0;
        if (!good) {
            throw reading.refused(
                    root,
                    "drawing",
                    "viewBox is \"" + NumberText.shortened(text)
                            + "\"; expected four numbers, the last two above 0; correct it.");
        }
        return numbers.stream().map(Optional::orElseThrow).toList();
    }

    /** A length in mm; nothing for percentages and what is no length. */
    private static Optional<Double> millimetres(String text) {
        Matcher length = LENGTH.matcher(text);
        if (!length.matches() || !MM.containsKey(length.group(2))) {
            return Optional.empty();
        }
        double unit = MM.get(length.group(2));
        return NumberText.parse(length.group(1)).filter(n -> n > 0).map(n -> n * unit);
    }
}
