package trueseam.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Zeros in [0, 1] of a cubic given by its four Bernstein values. By the variation-diminishing property a part whose
 * values do not change sign has no zero, one change means exactly one zero (then bisection with Newton steps), more
 * changes mean: halve and look again. Source: T. W. Sederberg, Computer Aided Geometric Design, course notes, chapter
 * on polynomial root finding in Bernstein form.
 */
final class BernsteinRoots {

    private static final double SAME_ROOT = 1e-9;
    private static final int DEEPEST = 48;

    private BernsteinRoots() {}

    static List<Double> of(double a, double b, double c, double d) {
        List<Double> found = new ArrayList<>(3);
        if (a == 0 && b == 0 && c == 0 && d == 0) {
            return found;
        }
        isolate(a, b, c, d, 0, 1, 0, found);
        return found;
    }

    private static void isolate(
            double a, double b, double c, double d, double t0, double t1, int depth, List<Double> found) {
        int changes = changes(a, b, c, d);
        if (a == 0) {
            add(found, t0);
        }
        if (changes == 1 && a != 0 && d != 0) {
            add(found, t0 + (t1 - t0) * single(a, b, c, d));
        } else if (changes > 0) {
            if (depth >= DEEPEST) {
                add(found, (t0 + t1) / 2); // a touching point: the line is tangent here
            } else {
                double ab = (a + b) / 2;
                double bc = (b + c) / 2;
                double cd = (c + d) / 2;
                double abc = (ab + bc) / 2;
                double bcd = (bc + cd) / 2;
                double mid = (abc + bcd) / 2;
                double tm = (t0 + t1) / 2;
                isolate(a, ab, abc, mid, t0, tm, depth + 1, found);
                isolate(mid, bcd, cd, d, tm, t1, depth + 1, found);
            }
        }
        if (d == 0) {
            add(found, t1);
        }
    }

    private static void add(List<Double> found, double t) {
        if (found.isEmpty() || t - found.get(found.size() - 1) > SAME_ROOT) {
            found.add(t);
        }
    }

    private static int changes(double a, double b, double c, double d) {
        int n = 0;
        double last = a;
        for (double next : new double[] {b, c, d}) {
            if (next != 0) {
                if (last != 0 && (last < 0) != (next < 0)) {
                    n++;
                }
                last = next;
            }
        }
        return n;
    }

    /** The one zero where the ends have opposite signs: Newton kept inside a shrinking bracket. */
    private static double single(double a, double b, double c, double d) {
        double lo = 0;
        double hi = 1;
        double t = a / (a - d);
        for (int i = 0; i < 80; i++) {
            double s = 1 - t;
            double f = s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
            if (f == 0) {
                return t;
            }
            if ((f < 0) == (a < 0)) {
                lo = t;
            } else {
                hi = t;
            }
            double slope = 3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (d - c));
            double next = t - f / slope;
            if (!(lo < next && next < hi)) {
                next = (lo + hi) / 2;
            }
            if (Math.abs(next - t) <= 1e-16 || hi - lo <= 1e-16) {
                return next;
            }
            t = next;
        }
        return t;
    }
}
