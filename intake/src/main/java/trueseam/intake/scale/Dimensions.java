package trueseam.intake.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;

/**
 * Dimension lines: a straight level or upright line, whole or parted by its number, that reaches from one short line across it to another.
 *
 * <pre>{@code
 *     |<------ 205 mm ------>|
 * }</pre>
 */
final class Dimensions {

    private static final double LEVEL_MM = 0.05;

    /** From the end of a dimension line to the line that it points at: an arrow head, mm. */
    private static final double HEAD_MM = 6;

    private final List<Bounds> level = new ArrayList<>();
    private final List<Bounds> upright = new ArrayList<>();

    private Dimensions(Drawing drawing) {
        for (Stroke stroke : drawing.strokes()) {
            Path path = stroke.path();
            if (path.segments().size() == 1 && !path.isClosed()) {
                Bounds box = path.bounds();
                if (box.height() < LEVEL_MM) {
                    level.add(box);
                } else if (box.width() < LEVEL_MM) {
                    upright.add(box);
                }
            }
        }
    }

    static Dimensions of(Drawing drawing) {
        return new Dimensions(drawing);
    }

    /** The line that a number stands at, with how long it is drawn; nothing if there is none, or several that disagree. */
    Optional<ScaleMark> at(Caption caption, SaidSize said) {
        if (said.sizes().size() != 1
                || said.sizes().get(0).acrossMm() != said.sizes().get(0).upMm()) {
            return Optional.empty();
        }
        SaidSize.Size size = said.sizes().get(0);
        double across = extent(caption, level, upright, true, size.acrossMm());
        double up = extent(caption, upright, level, false, size.acrossMm());
        if ((across > 0) == (up > 0)) {
            return Optional.empty();
        }
        return Optional.of(new ScaleMark(caption.text(), across, up, size.acrossMm(), size.upMm(), size.exactMm()));
    }

    private static double lo(Bounds box, boolean x) {
        return x ? box.minX() : box.minY();
    }

    private static double hi(Bounds box, boolean x) {
        return x ? box.maxX() : box.maxY();
    }

    /** Collinear lines near the number, from end mark to end mark; 0 if there are none with marks at both ends. */
    private static double extent(Caption caption, List<Bounds> along, List<Bounds> across, boolean x, double said) {
        double height = caption.heightMm();
        double beside = x ? caption.at().y() : caption.at().x();
        double middle = x ? caption.at().x() : caption.at().y();
        for (Bounds line : along) {
            double level = lo(line, !x);
            double from = lo(line, x);
            double to = hi(line, x);
            if (Math.abs(level - beside) > 2.5 * height || to < middle - said || from > middle + said) {
                continue;
            }
            // The other half, where the number parts the line.
            for (Bounds other : along) {
                boolean half = !other.equals(line)
                        && Math.abs(lo(other, !x) - level) < LEVEL_MM
                        && Math.abs(other.width() + other.height() - line.width() - line.height()) < 1
                        && lo(other, x) > to
                        && lo(other, x) - to < 8 * height;
                to = half ? hi(other, x) : to;
            }
            Optional<Double> first = mark(across, x, level, from);
            Optional<Double> last = mark(across, x, level, to);
            if (first.isPresent() && last.isPresent() && from < middle + 3 * height && middle - 3 * height < to) {
                double mm = last.get() - first.get();
                if (Math.abs(mm / said - 1) < 0.2) {
                    return mm;
                }
            }
        }
        return 0;
    }

    /** The line across at an end of a dimension line. */
    private static Optional<Double> mark(List<Bounds> across, boolean x, double level, double end) {
        return across.stream()
                .filter(a -> lo(a, !x) - HEAD_MM < level && level < hi(a, !x) + HEAD_MM)
                .map(a -> lo(a, x))
                .filter(at -> Math.abs(at - end) < HEAD_MM)
                .min(java.util.Comparator.comparingDouble(at -> Math.abs(at - end)));
    }
}
