package trueseam.output.figure;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** A freehand line through points: at each the line runs as from the point before to the point after. */
final class Smooth {

    private Smooth() {}

    /** The line through the points, open; points that fall together count once. */
    static List<Segment> through(List<Point> points) {
        List<Point> apart = new ArrayList<>();
        for (Point point : points) {
            if (apart.isEmpty() || !apart.get(apart.size() - 1).isNear(point, 0.01)) {
                apart.add(point);
            }
        }
        List<Segment> line = new ArrayList<>();
        for (int i = 0; i + 1 < apart.size(); i++) {
            double third = apart.get(i).distanceTo(apart.get(i + 1)) / 3;
            line.add(Cubic.of(
                    apart.get(i),
                    tangent(apart, i).times(third),
                    tangent(apart, i + 1).times(-third),
                    apart.get(i + 1)));
        }
        return line;
    }

    private static Vec tangent(List<Point> points, int i) {
        Point before = points.get(Math.max(0, i - 1));
        Point after = points.get(Math.min(points.size() - 1, i + 1));
        if (i == 0 || i == points.size() - 1 || points.size() < 3) {
            return after.minus(before).unit();
        }
        // weighted by the nearer neighbour, so that a short step beside a long one does not bulge
        double back = points.get(i).distanceTo(before);
        double on = points.get(i).distanceTo(after);
        Vec in = points.get(i).minus(before).times(on / back);
        Vec out = after.minus(points.get(i)).times(back / on);
        Vec sum = in.plus(out);
        return sum.length() < 1e-9 ? after.minus(before).unit() : sum.unit();
    }
}
