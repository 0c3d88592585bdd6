package trueseam.geometry;

/**
 * The nearest place of a path to a point: each curve is sampled, and every sample that is nearer than both neighbours
 * starts a golden-section search of the distance between them. Sixteen samples a curve are enough for cubics drawn in one
 * direction (a quarter turn each); a curve with a loop tighter than its sixteenth may hide a nearer place.
 */
final class Nearest {

    private static final int SAMPLES = 16;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Nearest() {}

    static PathPlace on(Path path, Point p) {
        double best = Double.POSITIVE_INFINITY;
        double bestAlong = 0;
        Point bestPoint = path.start();
        double before = 0;
        for (Segment s : path.segments()) {
            double t = parameter(s, p);
            Point q = s.at(t);
            double d = q.distanceTo(p);
            if (d < best) {
                best = d;
                bestAlong = before + s.lengthTo(t);
                bestPoint = q;
            }
            before += s.length();
        }
        return new PathPlace(bestAlong, bestPoint);
    }

    private static double parameter(Segment s, Point p) {
        if (s instanceof Line line) {
            Vec d = line.end().minus(line.start());
            double square = d.dot(d);
            return square > 0 ? Math.min(1, Math.max(0, p.minus(line.start()).dot(d) / square)) : 0;
        }
        double[] distance = new double[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            distance[i] = s.at((double) i / SAMPLES).distanceTo(p);
        }
        double best = distance[0] <= distance[SAMPLES] ? 0 : 1;
        double bestDistance = Math.min(distance[0], distance[SAMPLES]);
        for (int i = 0; i <= SAMPLES; i++) {
            boolean nearerThanLast = i == 0 || distance[i] <= distance[i - 1];
            boolean nearerThanNext = i == SAMPLES || distance[i] <= distance[i + 1];
            if (nearerThanLast && nearerThanNext) {
                double t = refine(s, p, Math.max(0, (i - 1.0) / SAMPLES), Math.min(1, (i + 1.0) / SAMPLES));
                double d = s.at(t).distanceTo(p);
                if (d < bestDistance) {
                    bestDistance = d;
                    best = t;
                }
            }
        }
        return best;
    }

    /** Golden section to a coarse bracket, then Newton on (at(t) - p) . derivative(t) = 0 for the last digits. */
    private static double refine(Segment s, Point p, double lo, double hi) {
        double a = lo;
        double b = hi;
        for (int i = 0; i < 24; i++) {
            double left = b - GOLDEN * (b - a);
            double right = a + GOLDEN * (b - a);
            if (s.at(left).distanceTo(p) <= s.at(right).distanceTo(p)) {
                b = right;
            } else {
                a = left;
            }
        }
        double t = (a + b) / 2;
        for (int i = 0; i < 6; i++) {
            Vec away = s.at(t).minus(p);
            Vec d = s.derivative(t);
            double slope = d.dot(d) + away.dot(s.secondDerivative(t));
            double next = t - away.dot(d) / slope;
            if (!(lo <= next && next <= hi)) {
                return t;
            }
            t = next;
        }
        return t;
    }
}
