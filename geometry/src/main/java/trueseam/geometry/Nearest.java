package trueseam.geometry;

/**
 * The nearest place of a path to a point. Where a curve comes nearest, either an end lies or the way to the point is square
 * to the curve: {@code (at(t) - p) . derivative(t) = 0}, a polynomial of degree five whose zeros are all found. Source for
 * its Bernstein values: P. J. Schneider, "Solving the nearest-point-on-curve problem", Graphics Gems (1990).
 */
final class Nearest {

    /** Share of control point i and side j in value i + j: C(3, i) C(2, j) / C(5, i + j). */
    private static final double[][] SHARE = {{1, 0.4, 0.1}, {0.6, 0.6, 0.3}, {0.3, 0.6, 0.6}, {0.1, 0.4, 1}};

    private Nearest() {}

    static PathPlace on(Path path, Point p) {
        double best = Double.POSITIVE_INFINITY;
        int bestStroke = 0;
        double bestT = 0;
        int i = 0;
        for (Segment s : path.segments()) {
            if (!(s instanceof Cubic c) || leastDistance(c, p) < best) {
                double t = parameter(s, p);
                double d = s.at(t).distanceTo(p);
                if (d < best) {
                    best = d;
                    bestStroke = i;
                    bestT = t;
                }
            }
            i++;
        }
        Segment s = path.segments().get(bestStroke);
        return new PathPlace(path.startOf(bestStroke) + s.lengthTo(bestT), s.at(bestT));
    }

    /** To the box of the control points, which holds the curve: it is never nearer than this. */
    private static double leastDistance(Cubic c, Point p) {
        Bounds box = Bounds.of(c.start(), c.end()).with(Bounds.of(c.handle1(), c.handle2()));
        double dx = Math.max(0, Math.max(box.minX() - p.x(), p.x() - box.maxX()));
        double dy = Math.max(0, Math.max(box.minY() - p.y(), p.y() - box.maxY()));
        return Math.sqrt(dx * dx + dy * dy);
    }

    private static double parameter(Segment s, Point p) {
        if (s instanceof Line line) {
            Vec d = line.end().minus(line.start());
            double square = d.dot(d);
            return square > 0 ? Math.min(1, Math.max(0, p.minus(line.start()).dot(d) / square)) : 0;
        }
        double best = 0;
        double bestDistance = s.at(0).distanceTo(p);
        for (double t : BernsteinRoots.of(squareTo((Cubic) s, p))) {
            double d = s.at(t).distanceTo(p);
            if (d < bestDistance) {
                best = t;
                bestDistance = d;
            }
        }
        return s.at(1).distanceTo(p) < bestDistance ? 1 : best;
    }

    /** The Bernstein values of {@code (at(t) - p) . derivative(t) / 3}. */
    private static double[] squareTo(Cubic c, Point p) {
        double[] x = {
            c.start().x() - p.x(),
            c.handle1().x() - p.x(),
            c.handle2().x() - p.x(),
            c.end().x() - p.x()
        };
        double[] y = {
            c.start().y() - p.y(),
            c.handle1().y() - p.y(),
            c.handle2().y() - p.y(),
            c.end().y() - p.y()
        };
        double[] value = new double[6];
        for (int j = 0; j < 3; j++) {
            double sideX = x[j + 1] - x[j];
            double sideY = y[j + 1] - y[j];
            for (int i = 0; i < 4; i++) {
                value[i + j] += SHARE[i][j] * (x[i] * sideX + y[i] * sideY);
            }
        }
        return value;
    }
}
