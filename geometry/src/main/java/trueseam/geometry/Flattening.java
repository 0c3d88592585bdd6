package trueseam.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Curves as chains of chords. A cubic is cut into n equal steps of its parameter with n = sqrt(6 D / (8 tolerance)),
 * where D is its greatest second difference; a chord then lies within the tolerance (Taylor: error at most h²/8 times the
 * greatest second derivative, which is 6 D).
 */
final class Flattening {

    private static final int MOST = 100_000;

    private Flattening() {}

    static List<Point> of(Path path, double toleranceMm) {
        if (!(toleranceMm > 0)) {
            throw new GeometryException("A path cannot be flattened to " + toleranceMm + " mm; give more than 0.");
        }
        List<Point> points = new ArrayList<>();
        points.add(path.start());
        for (Segment s : path.segments()) {
            int n = s instanceof Cubic c ? steps(c, toleranceMm) : 1;
            for (int i = 1; i <= n; i++) {
                points.add(s.at((double) i / n));
            }
        }
        return List.copyOf(points);
    }

    private static int steps(Cubic c, double toleranceMm) {
        double first = secondDifference(c.start(), c.handle1(), c.handle2());
        double second = secondDifference(c.handle1(), c.handle2(), c.end());
        // Chord error of a parabola piece: |second derivative| / 8 n², with |second derivative| <= 6 max(first,
        // second).
        double n = Math.ceil(Math.sqrt(0.75 * Math.max(first, second) / toleranceMm));
        if (n > MOST) {
            throw new GeometryException("A curve from " + c.start() + " to " + c.end() + " would take more than " + MOST
                    + " chords at " + toleranceMm + " mm; choose a coarser tolerance.");
        }
        return Math.max(1, (int) n);
    }

    private static double secondDifference(Point a, Point b, Point c) {
        return Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
    }
}
