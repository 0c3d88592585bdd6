package trueseam.cloth.packing;

import java.util.List;
import trueseam.geometry.Point;

/** A part in one of the ways in which it may lie, and where its reference point may come. */
final class Form {

    final int part;
    final Way way;

    /** Parts of one kind have one outline; a mirrored one is another kind. */
    final int kind;

    final Polygon polygon;
    final double lowX;
    final double lowY;
    final double highY;
    final double reachX;
    final double stepX;
    final double phaseX;
    final double stepY;
    final double phaseY;

    private Form(int part, StripPart of, Way way, int kind, Polygon polygon, double width) {
        this.part = part;
        this.way = way;
        this.kind = kind;
        this.polygon = polygon;
        lowX = -polygon.minX;
        reachX = polygon.maxX;
        lowY = -polygon.minY;
        double most = width - polygon.maxY;
        highY = of.onFold() ? Math.min(lowY, most) : most;
        Point m = laid(of.matched(), way);
        stepX = of.along().map(Rhythm::step).orElse(0.0);
        phaseX = of.along().map(r -> r.phase() - m.x()).orElse(0.0);
        stepY = of.across().map(Rhythm::step).orElse(0.0);
        phaseY = of.across().map(r -> r.phase() - m.y()).orElse(0.0);
    }

    static Form of(int part, StripPart of, Way way, double width) {
        Polygon drawn = Polygon.of(
                way.mirrored()
                        ? of.outline().stream()
                                .map(p -> new Point(p.x(), -p.y()))
                                .toList()
                        : of.outline());
        return new Form(part, of, way, 2 * part + (way.mirrored() ? 1 : 0), drawn.turned(way.turnDegrees()), width);
    }

    /** A place of the part as drawn, after it was laid in a way. */
    static Point laid(Point p, Way way) {
        double y = way.mirrored() ? -p.y() : p.y();
        double c = Polygon.cos(way.turnDegrees());
        double s = Polygon.sin(way.turnDegrees());
        return new Point(c * p.x() - s * y, s * p.x() + c * y);
    }

    /** The nearest allowed place along the strip; NaN where there is none. */
    double allowedX(double x, double length) {
        return allowed(x, lowX, length - reachX, stepX, phaseX);
    }

    double allowedY(double y) {
        return allowed(y, lowY, highY, stepY, phaseY);
    }

    private static double allowed(double v, double low, double high, double step, double phase) {
        double slack = 1e-9 * (1 + Math.abs(low));
        if (high < low - slack) {
            return Double.NaN;
        }
        double in = Math.max(low, Math.min(Math.max(low, high), v));
        if (step == 0) {
            return in;
        }
        double least = Math.ceil((low - phase) / step - 1e-9);
        double most = Math.floor((high - phase) / step + 1e-9);
        if (most < least) {
            return Double.NaN;
        }
        return phase + step * Math.max(least, Math.min(most, Math.rint((in - phase) / step)));
    }

    static List<Form> all(int part, StripPart of, double width) {
        return of.ways().stream().distinct().map(w -> of(part, of, w, width)).toList();
    }
}
