package trueseam.fitting.tissue;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/**
 * Draws a line of the same shape between new ends. This is drawing, not moving: the line may come out larger or smaller, which a
 * {@link trueseam.geometry.Motion} cannot.
 */
final class Refitting {

    private final Point from;
    private final Point to;
    private final double cos;
    private final double sin;

    private Refitting(Path line, Point a, Point b) {
        this.from = line.start();
        this.to = a;
        Vec was = line.end().minus(line.start());
        Vec is = b.minus(a);
        double square = was.dot(was);
        this.cos = was.dot(is) / square;
        this.sin = was.cross(is) / square;
    }

    static Path between(Path line, Point a, Point b) {
        if (line.start().isNear(line.end(), Path.CHAIN_MM)) {
            return Path.of(new Line(a, b));
        }
        Refitting fit = new Refitting(line, a, b);
        List<Segment> drawn = new ArrayList<>();
        for (Segment s : line.segments()) {
            drawn.add(
                    s instanceof Cubic c
                            ? new Cubic(fit.at(c.start()), fit.at(c.handle1()), fit.at(c.handle2()), fit.at(c.end()))
                            : new Line(fit.at(s.start()), fit.at(s.end())));
        }
        return Path.of(drawn);
    }

    private Point at(Point p) {
        Vec v = p.minus(from);
        return to.plus(new Vec(cos * v.x() - sin * v.y(), sin * v.x() + cos * v.y()));
    }
}
