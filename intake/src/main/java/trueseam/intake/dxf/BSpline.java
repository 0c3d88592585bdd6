package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.convert.Curves;

/**
 * A curve by control points and knots. Between two knots it is one polynomial, whose Bezier points are its polar form at the knots: what
 * de Boor's steps give if each step takes a knot of its own (L. Ramshaw, "Blossoms are polar forms", Computer Aided Geometric Design 6,
 * 1989). So up to degree 3 it is kept exactly. A rational one, or one of higher degree, is followed by chords.
 *
 * @param degree 1 to 10
 * @param knots never falling, degree + 1 more than control points
 * @param controls control points
 * @param weights one for each control point, above 0
 */
record BSpline(int degree, List<Double> knots, List<Point> controls, List<Double> weights) {

    /** Chords stay so near to a curve that is not kept exactly. */
    static final double CHORD_MM = 0.01;

    private static final int MOST_CONTROLS = 20_000;
    private static final int MOST_HALVINGS = 12;

    BSpline {
        if (!(1 <= degree && degree <= 10)) {
            throw new EntityException("a spline of degree " + degree + " is not possible; 1 to 10 is");
        }
        if (!(degree < controls.size() && controls.size() <= MOST_CONTROLS)) {
            throw new EntityException("a spline of degree " + degree + " cannot have " + controls.size()
                    + " control points" + (controls.isEmpty() ? " (points to pass through alone say no curve)" : ""));
        }
        if (knots.size() != controls.size() + degree + 1) {
            throw new EntityException("a spline of degree " + degree + " with " + controls.size()
                    + " control points needs " + (controls.size() + degree + 1) + " knots and has " + knots.size());
        }
        for (int i = 1; i < knots.size(); i++) {
            if (!(knots.get(i - 1) <= knots.get(i))) {
                throw new EntityException("the knots of a spline must not fall, and knot " + (i + 1) + " does");
            }
        }
        if (weights.size() != controls.size() || !weights.stream().allMatch(w -> 1e-6 <= w && w <= 1e6)) {
            throw new EntityException("a spline needs a weight above 0 for each of its control points");
        }
    }

    boolean isExact() {
        return degree <= 3 && weights.stream().allMatch(weights.get(0)::equals);
    }

    Path path() {
        List<Segment> all = new ArrayList<>();
        for (int k = degree; k < controls.size(); k++) {
            if (knots.get(k) < knots.get(k + 1)) {
                if (isExact()) {
                    exact(k, all);
                } else {
                    chords(k, all);
                }
            }
        }
        if (all.isEmpty()) {
            throw new EntityException("a spline whose knots are all one has no length");
        }
        return Path.of(all);
    }

    /** Adds the one Bezier curve of a span; it begins where the last ended, to the last digit. */
    private void exact(int k, List<Segment> all) {
        double u = knots.get(k);
        double v = knots.get(k + 1);
        Point[] b = new Point[degree + 1];
        for (int i = 0; i <= degree; i++) {
            double[] at = new double[degree];
            for (int j = 0; j < degree; j++) {
                at[j] = j < degree - i ? u : v;
            }
            b[i] = polar(k, at);
        }
        if (!all.isEmpty() && all.get(all.size() - 1).end().isNear(b[0], Path.CHAIN_MM)) {
            b[0] = all.get(all.size() - 1).end();
        }
        all.add(
                switch (degree) {
                    case 1 -> new Line(b[0], b[1]);
                    case 2 -> Curves.quadratic(b[0], b[1], b[2]);
                    default -> new Cubic(b[0], b[1], b[2], b[3]);
                });
    }

    private void chords(int k, List<Segment> all) {
        double u = knots.get(k);
        double v = knots.get(k + 1);
        int parts = 2 * degree;
        Point from = all.isEmpty() ? on(k, u) : all.get(all.size() - 1).end();
        for (int i = 1; i <= parts; i++) {
            double before = u + (v - u) * (i - 1) / parts;
            double after = i == parts ? v : u + (v - u) * i / parts;
            Point to = on(k, after);
            chord(k, before, from, after, to, MOST_HALVINGS, all);
            from = to;
        }
    }

    private void chord(int k, double u, Point from, double v, Point to, int halvings, List<Segment> all) {
        double middle = (u + v) / 2;
        Point half = on(k, middle);
        boolean near = off(from, to, half) <= CHORD_MM / 2
                && off(from, to, on(k, (u + middle) / 2)) <= CHORD_MM / 2
                && off(from, to, on(k, (middle + v) / 2)) <= CHORD_MM / 2;
        if (near || halvings == 0) {
            if (!from.equals(to)) {
                all.add(new Line(from, to));
            }
            return;
        }
        chord(k, u, from, middle, half, halvings - 1, all);
        chord(k, middle, half, v, to, halvings - 1, all);
    }

    /** How far a point lies from the straight line between two others. */
    private static double off(Point from, Point to, Point p) {
        return p.distanceTo(new Line(from, to).at(share(from, to, p)));
    }

    private static double share(Point from, Point to, Point p) {
        double whole = to.minus(from).dot(to.minus(from));
        return whole > 0 ? Math.min(1, Math.max(0, p.minus(from).dot(to.minus(from)) / whole)) : 0;
    }

    private Point on(int k, double u) {
        double[] at = new double[degree];
        Arrays.fill(at, u);
        return polar(k, at);
    }

    /** De Boor's steps in the span k, each with a parameter of its own; weights ride along as a third coordinate. */
    private Point polar(int k, double[] at) {
        double[] x = new double[degree + 1];
        double[] y = new double[degree + 1];
        double[] w = new double[degree + 1];
        for (int j = 0; j <= degree; j++) {
            int i = k - degree + j;
            w[j] = weights.get(i);
            x[j] = controls.get(i).x() * w[j];
            y[j] = controls.get(i).y() * w[j];
        }
        for (int r = 1; r <= degree; r++) {
            for (int j = degree; j >= r; j--) {
                int i = k - degree + j;
                double low = knots.get(i);
                double share = (at[r - 1] - low) / (knots.get(i + degree - r + 1) - low);
                x[j] = (1 - share) * x[j - 1] + share * x[j];
                y[j] = (1 - share) * y[j - 1] + share * y[j];
                w[j] = (1 - share) * w[j - 1] + share * w[j];
            }
        }
        return new Point(x[degree] / w[degree], y[degree] / w[degree]);
    }
}
