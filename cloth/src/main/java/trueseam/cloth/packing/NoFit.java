package trueseam.cloth.packing;

import java.util.Arrays;

/**
 * The border of all places at which one shape overlaps another: the Minkowski sum of the one and the other turned about its reference
 * point. It is found from the convolution of the two outlines (Guibas, Ramshaw, Stolfi, "A kinetic framework for computational
 * geometry", 1983): what a point of the convolution is wound round by at least once lies in the sum; only edges that meet convex corners
 * can be its border (the reduced convolution of Behar and Lien, "Fast and robust 2D Minkowski sum using reduced convolution", 2011). The
 * border is left as loose oriented stretches, the sum on their left: nothing here needs them joined.
 */
final class NoFit {

    /** How far beside a stretch it is asked whether the sum goes on there, as part of the extent. */
    private static final double BESIDE = 1e-7;

    private static final double TINY = 1e-9;

    /** Stretches of the border: from (x0, y0) to (x1, y1). */
    final double[] x0;

    final double[] y0;
    final double[] x1;
    final double[] y1;

    /** The whole convolution, for the winding number. */
    private final Stretches all;

    private NoFit(Stretches border, Stretches all) {
        this.x0 = Arrays.copyOf(border.x0, border.size);
        this.y0 = Arrays.copyOf(border.y0, border.size);
        this.x1 = Arrays.copyOf(border.x1, border.size);
        this.y1 = Arrays.copyOf(border.y1, border.size);
        this.all = all;
    }

    /**
     * Where b, moved by d against a, overlaps it: d lies in a + (-b).
     */
    static NoFit of(Polygon a, Polygon b) {
        Polygon c = b.turned(180);
        Stretches all = new Stretches();
        convolve(a, c, true, all);
        convolve(c, a, false, all);
        double extent = Math.max(a.maxX - a.minX + c.maxX - c.minX, a.maxY - a.minY + c.maxY - c.minY);
        return new NoFit(border(all, extent), all);
    }

    /** How often the convolution winds round a place: 0 outside the sum. */
    int winding(double px, double py) {
        return all.winding(px, py);
    }

    /** Edges of one polygon at the corners of the other. Parallel edges: those of the first come before those of the second. */
    private static void convolve(Polygon edges, Polygon corners, boolean first, Stretches into) {
        int n = edges.size();
        int m = corners.size();
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            double ux = edges.x[j] - edges.x[i];
            double uy = edges.y[j] - edges.y[i];
            for (int k = 0; k < m; k++) {
                int before = (k + m - 1) % m;
                int after = (k + 1) % m;
                double px = corners.x[k] - corners.x[before];
                double py = corners.y[k] - corners.y[before];
                double qx = corners.x[after] - corners.x[k];
                double qy = corners.y[after] - corners.y[k];
                double turn = px * qy - py * qx;
                double in = px * uy - py * ux;
                double out = ux * qy - uy * qx;
                if (turn > 0) {
                    if (first ? in > 0 && out >= 0 : in >= 0 && out > 0) {
                        into.add(edges, i, j, corners.x[k], corners.y[k], 1);
                    }
                } else if (turn < 0 && (first ? out < 0 && in <= 0 : out <= 0 && in < 0)) {
                    into.add(edges, i, j, corners.x[k], corners.y[k], -1);
                }
            }
        }
    }

    private static Stretches border(Stretches all, double extent) {
        double tiny = TINY * extent;
        double beside = BESIDE * extent;
        Stretches border = new Stretches();
        double[] at = new double[64];
        for (int i = 0; i < all.size; i++) {
            if (all.sign[i] < 0) {
                continue;
            }
            double ax = all.x0[i];
            double ay = all.y0[i];
            double ux = all.x1[i] - ax;
            double uy = all.y1[i] - ay;
            double length = Math.sqrt(ux * ux + uy * uy);
            if (length < tiny) {
                continue;
            }
            int count = 0;
            at[count++] = 0;
            at[count++] = 1;
            for (int j = 0; j < all.size; j++) {
                if (j == i || all.sign[j] < 0 || all.apart(i, j, tiny)) {
                    continue;
                }
                if (count + 3 > at.length) {
                    at = Arrays.copyOf(at, at.length * 2);
                }
                count = crossings(all, i, j, ux, uy, length, tiny, at, count);
            }
            Arrays.sort(at, 0, count);
            double from = 0;
            for (int k = 1; k < count; k++) {
                double to = Math.min(1, at[k]);
                if ((to - from) * length < tiny) {
                    continue;
                }
                double mid = (from + to) / 2;
                double mx = ax + mid * ux + beside * uy / length;
                double my = ay + mid * uy - beside * ux / length;
                if (all.winding(mx, my) <= 0) {
                    border.add(ax + from * ux, ay + from * uy, ax + to * ux, ay + to * uy, 1);
                }
                from = to;
            }
        }
        return border;
    }

    /** Where stretch j meets stretch i, as parts of i's length. */
    private static int crossings(
            Stretches all, int i, int j, double ux, double uy, double length, double tiny, double[] at, int count) {
        int n = count;
        double ax = all.x0[i];
        double ay = all.y0[i];
        double off0 = (ux * (all.y0[j] - ay) - uy * (all.x0[j] - ax)) / length;
        double off1 = (ux * (all.y1[j] - ay) - uy * (all.x1[j] - ax)) / length;
        if (Math.abs(off0) < tiny) {
            n = take(((all.x0[j] - ax) * ux + (all.y0[j] - ay) * uy) / (length * length), at, n);
        }
        if (Math.abs(off1) < tiny) {
            n = take(((all.x1[j] - ax) * ux + (all.y1[j] - ay) * uy) / (length * length), at, n);
        }
        if ((off0 > 0) != (off1 > 0) && Math.abs(off0 - off1) > tiny) {
            double t = off0 / (off0 - off1);
            double cx = all.x0[j] + t * (all.x1[j] - all.x0[j]);
            double cy = all.y0[j] + t * (all.y1[j] - all.y0[j]);
            n = take(((cx - ax) * ux + (cy - ay) * uy) / (length * length), at, n);
        }
        return n;
    }

    private static int take(double t, double[] at, int count) {
        if (t <= 0 || t >= 1) {
            return count;
        }
        at[count] = t;
        return count + 1;
    }

    /** Stretches with a sign, growing. */
    private static final class Stretches {
        private double[] x0 = new double[128];
        private double[] y0 = new double[128];
        private double[] x1 = new double[128];
        private double[] y1 = new double[128];
        private byte[] sign = new byte[128];
        private int size;

        void add(Polygon edges, int i, int j, double dx, double dy, int sign) {
            add(edges.x[i] + dx, edges.y[i] + dy, edges.x[j] + dx, edges.y[j] + dy, sign);
        }

        void add(double ax, double ay, double bx, double by, int s) {
            if (size == x0.length) {
                x0 = Arrays.copyOf(x0, size * 2);
                y0 = Arrays.copyOf(y0, size * 2);
                x1 = Arrays.copyOf(x1, size * 2);
                y1 = Arrays.copyOf(y1, size * 2);
                sign = Arrays.copyOf(sign, size * 2);
            }
            x0[size] = ax;
            y0[size] = ay;
            x1[size] = bx;
            y1[size] = by;
            sign[size++] = (byte) s;
        }

        boolean apart(int i, int j, double tiny) {
            return Math.max(x0[i], x1[i]) + tiny < Math.min(x0[j], x1[j])
                    || Math.max(x0[j], x1[j]) + tiny < Math.min(x0[i], x1[i])
                    || Math.max(y0[i], y1[i]) + tiny < Math.min(y0[j], y1[j])
                    || Math.max(y0[j], y1[j]) + tiny < Math.min(y0[i], y1[i]);
        }

        int winding(double px, double py) {
            int winding = 0;
            for (int k = 0; k < size; k++) {
                double a = y0[k];
                double b = y1[k];
                if ((a <= py) != (b <= py)) {
                    double side = (x1[k] - x0[k]) * (py - a) - (px - x0[k]) * (b - a);
                    // Upward and to the right of the place, or downward and to the right of it.
                    if (b > a ? side > 0 : side < 0) {
                        winding += b > a ? sign[k] : -sign[k];
                    }
                }
            }
            return winding;
        }
    }
}
