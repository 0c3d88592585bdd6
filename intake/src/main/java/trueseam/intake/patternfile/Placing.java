package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.geometry.GeometryException;
import trueseam.geometry.convert.Affine;

/**
 * The {@code transform} of an element. Source: SVG 1.1 (second edition), 7.6. A pattern may be turned and shifted in an
 * editor; stretched, sheared or mirrored it would not fit any more.
 */
final class Placing {

    /** Editors write a turn with four decimals or more; a stretch of 0.02 % is a tenth of a millimetre in half a metre. */
    private static final double ROUNDING = 2e-4;

    private static final Pattern FUNCTION = Pattern.compile("\\s*,?\\s*([a-zA-Z]+)\\s*\\(([^()]*)\\)\\s*");

    private final Reading reading;

    Placing(Reading reading) {
        this.reading = reading;
    }

    /** Where the element lies in its parent: a turn and a shift, in the file's coordinates. */
    Affine of(SvgNode node, String what) {
        if (node.attribute("style")
                .filter(style -> style.matches("(?s).*(^|[;\\s])transform\\s*:.*"))
                .isPresent()) {
            throw reading.refused(
                    node, what, "It is moved by a style; expected an attribute transform; write it as an attribute.");
        }
        String text = node.attribute("transform").orElse("");
        if (text.isBlank()) {
            return Affine.NONE;
        }
        return rigid(parse(text, node, what), node, what);
    }

    private Affine parse(String text, SvgNode node, String what) {
        Affine all = Affine.NONE;
        Matcher function = FUNCTION.matcher(text);
        int at = 0;
        while (at < text.length()) {
            if (!function.find() || function.start() != at) {
                throw unreadable(text, node, what);
            }
            List<Double> numbers = new ArrayList<>();
            for (String number : function.group(2).strip().split("\\s*,\\s*|\\s+", -1)) {
                numbers.add(NumberText.parse(number).orElseThrow(() -> unreadable(text, node, what)));
            }
            try {
                // The last function is done first.
                all = step(function.group(1), numbers, text, node, what).then(all);
            } catch (GeometryException tooLarge) {
                throw unreadable(text, node, what);
            }
            at = function.end();
        }
        return all;
    }

    private Affine step(String name, List<Double> n, String text, SvgNode node, String what) {
        return switch (name + n.size()) {
            case "matrix6" -> new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
            case "translate1" -> shift(n.get(0), 0);
            case "translate2" -> shift(n.get(0), n.get(1));
            case "rotate1" -> turn(n.get(0));
            case "rotate3" -> shift(-n.get(1), -n.get(2)).then(turn(n.get(0))).then(shift(n.get(1), n.get(2)));
            case "scale1" -> Affine.scale(n.get(0));
            case "scale2" -> new Affine(n.get(0), 0, 0, n.get(1), 0, 0);
            case "skewX1" -> new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0);
            case "skewY1" -> new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0);
            default -> throw unreadable(text, node, what);
        };
    }

    private static Affine shift(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    private static Affine turn(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return new Affine(c, s, -s, c, 0, 0);
    }

    private PatternFileException unreadable(String text, SvgNode node, String what) {
        return reading.refused(
                node,
                what,
                "transform is \"" + NumberText.shortened(text)
                        + "\"; expected translate, rotate or matrix with numbers; correct it or take it out.");
    }

    private Affine rigid(Affine m, SvgNode node, String what) {
        boolean turnOnly = Math.abs(Math.hypot(m.a(), m.b()) - 1) <= ROUNDING
                && Math.abs(m.a() - m.d()) <= ROUNDING
                && Math.abs(m.b() + m.c()) <= ROUNDING;
        if (!turnOnly) {
            throw reading.refused(
                    node,
                    what,
                    "It is stretched, slanted or mirrored by its transform; a pattern may only be turned and shifted;"
                            + " undo that in the editor.");
        }
        if (m.b() == 0 && m.c() == 0) {
            return shift(m.e(), m.f());
        }
        double angle = Math.atan2(m.b() - m.c(), m.a() + m.d());
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Affine(c, s, -s, c, m.e(), m.f());
    }
}
