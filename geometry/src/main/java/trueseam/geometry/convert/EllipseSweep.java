package trueseam.geometry.convert;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Part of an ellipse by its centre and conjugate radii: {@code centre + cos(angle) across + sin(angle) up}.
 *
 * <p>A cubic with handles 4/3 tan(turn / 4) of the radius keeps a quarter circle to 2.73e-4 of its radius and errs with
 * the sixth power of its turn (M. Goldapp, "Approximation of circular arcs by cubic polynomials", Computer Aided Geometric
 * Design 8, 1991); an ellipse is a stretched circle, its error at most that of its greater radius. So the turn of each
 * cubic follows from the tolerance.
 */
record EllipseSweep(Point centre, Vec across, Vec up, double fromRad, double turnRad) {

    private static final double TOLERANCE_MM = 0.9e-6;
    private static final double QUARTER_ERROR = 2.73e-4;

    /** The cubics; the ends are taken as given, so that a chain closes to the last digit. */
    List<Cubic> cubics(Point start, Point end) {
        double radius = across.length() + up.length(); // at least the greater one, also of skewed radii
        double step = Math.PI / 2 * Math.pow(TOLERANCE_MM / (QUARTER_ERROR * radius), 1.0 / 6);
        int n = Math.max((int) Math.ceil(Math.abs(turnRad) / Math.min(step, Math.PI / 2)), 1);
        double turn = turnRad / n;
        double handle = 4.0 / 3 * Math.tan(turn / 4);
        List<Cubic> all = new ArrayList<>(n);
        Point at = start;
        for (int i = 1; i <= n; i++) {
            double before = fromRad + (i - 1) * turn;
            double after = fromRad + i * turn;
            Point to = i == n ? end : point(after);
            all.add(Cubic.of(at, speed(before).times(handle), speed(after).times(-handle), to));
            at = to;
        }
        return all;
    }

    private Point point(double angle) {
        return centre.plus(across.times(Math.cos(angle))).plus(up.times(Math.sin(angle)));
    }

    private Vec speed(double angle) {
        return across.times(-Math.sin(angle)).plus(up.times(Math.cos(angle)));
    }
}
