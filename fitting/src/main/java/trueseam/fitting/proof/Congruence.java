package trueseam.fitting.proof;

import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * How far two lines are from being the same line moved: the best rigid motion is found from points at equal lengths along both (least
 * squares, closed form in the plane), and the largest distance left over is returned. It does not use the motion that the steps
 * made. Source of the closed form: B. K. P. Horn, Closed-form solution of absolute orientation, 1987, in two dimensions.
 */
final class Congruence {

    private static final int POINTS = 5;

    private Congruence() {}

    /** The larger of the difference in length and the largest distance left after the best motion, mm. */
    static double missMm(Path original, Path traced) {
        double whole = original.length();
        double lengthMiss = Math.abs(whole - traced.length());
        double both = Math.min(whole, traced.length());
        Point[] a = new Point[POINTS];
        Point[] b = new Point[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double along = both * i / (POINTS - 1);
            a[i] = original.pointAt(along);
            b[i] = traced.pointAt(along);
        }
        return Math.max(lengthMiss, residue(a, b));
    }

    private static double residue(Point[] a, Point[] b) {
        Vec centreA = centre(a);
        Vec centreB = centre(b);
        double dot = 0;
        double cross = 0;
        for (int i = 0; i < a.length; i++) {
            Vec u = from(a[i], centreA);
            Vec v = from(b[i], centreB);
            dot += u.dot(v);
            cross += u.cross(v);
        }
        double turn = Math.atan2(cross, dot);
        double worst = 0;
        for (int i = 0; i < a.length; i++) {
            worst = Math.max(
                    worst,
                    from(a[i], centreA).turned(turn).minus(from(b[i], centreB)).length());
        }
        return worst;
    }

    private static Vec centre(Point[] points) {
        Vec sum = Vec.ZERO;
        for (Point p : points) {
            sum = sum.plus(p.minus(Point.ORIGIN));
        }
        return sum.times(1.0 / points.length);
    }

    private static Vec from(Point p, Vec centre) {
        return p.minus(Point.ORIGIN).minus(centre);
    }
}
