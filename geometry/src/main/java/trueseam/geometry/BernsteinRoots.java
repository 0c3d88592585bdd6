package trueseam.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Zeros in [0, 1] of a polynomial given by its Bernstein values. By the variation-diminishing property a part whose
 * values do not change sign has no zero, one change means exactly one zero (then bisection with Newton steps), more
 * changes mean: halve and look again. Source: T. W. Sederberg, Computer Aided Geometric Design, course notes, chapter
 * on polynomial root finding in Bernstein form.
 */
final class BernsteinRoots {

    private static final double SAME_ROOT = 1e-9;
    private static final int DEEPEST = 48;

    private BernsteinRoots() {}

    /**
     * The zeros, in order, each once.
     *
     * @param values one more than the degree
     * @return parameters; empty too when every value is zero
     */
    static List<Double> of(double... values) {
        List<Double> found = new ArrayList<>(3);
        if (changes(values) > 0 || values[0] == 0 || values[values.length - 1] == 0) {
            for (double v : values) {
                if (v != 0) {
                    isolate(values, 0, 1, 0, found);
                    break;
                }
            }
        }
        return found;
    }

    private static void isolate(double[] v, double t0, double t1, int depth, List<Double> found) {
        int changes = changes(v);
        double first = v[0];
        double last = v[v.length - 1];
        if (first == 0) {
            add(found, t0);
        }
        if (changes == 1 && first != 0 && last != 0) {
            add(found, t0 + (t1 - t0) * single(v));
        } else if (changes > 0) {
            if (depth >= DEEPEST) {
                add(found, (t0 + t1) / 2); // a touching point: the line is tangent here
            } else {
                double[] right = v.clone();
                double[] left = leftHalf(right);
                double tm = (t0 + t1) / 2;
                isolate(left, t0, tm, depth + 1, found);
                isolate(right, tm, t1, depth + 1, found);
            }
        }
        if (last == 0) {
            add(found, t1);
        }
    }

    /** De Casteljau at a half: returns the values of the left part and leaves those of the right part in place. */
    private static double[] leftHalf(double[] v) {
        double[] left = new double[v.length];
        left[0] = v[0];
        for (int level = 1; level < v.length; level++) {
            for (int i = 0; i < v.length - level; i++) {
                v[i] = (v[i] + v[i + 1]) / 2;
            }
            left[level] = v[0];
        }
        return left;
    }

    private static void add(List<Double> found, double t) {
        if (found.isEmpty() || t - found.get(found.size() - 1) > SAME_ROOT) {
            found.add(t);
        }
    }

    private static int changes(double[] v) {
        int n = 0;
        double last = v[0];
        for (int i = 1; i < v.length; i++) {
            double next = v[i];
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
    private static double single(double[] v) {
        int n = v.length - 1;
        double[] work = new double[v.length];
        double lo = 0;
        double hi = 1;
        double t = v[0] / (v[0] - v[n]);
        for (int i = 0; i < 80; i++) {
            double s = 1 - t;
            System.arraycopy(v, 0, work, 0, v.length);
            for (int level = 1; level < n; level++) {
                for (int k = 0; k <= n - level; k++) {
                    work[k] = s * work[k] + t * work[k + 1];
                }
            }
            double f = s * work[0] + t * work[1];
            double slope = n * (work[1] - work[0]);
            if (f == 0) {
                return t;
            }
            if ((f < 0) == (v[0] < 0)) {
                lo = t;
            } else {
                hi = t;
            }
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
