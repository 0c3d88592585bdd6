package trueseam.output.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * How far out a line of the figure lies at each height: a smooth curve through given stations that hardly overshoots
 * and does not wobble between them.
 *
 * <p>Source: after the monotone piecewise cubic interpolation of Fritsch and Carlson, SIAM Journal on Numerical Analysis 17, 1980 (from
 * memory): slopes of the parabola through three stations, held to three times the gentler rise, and at a
 * narrowest place not forced upright, which would look like a kink. Each piece is a cubic in y, so
 * it is a cubic curve exactly.
 */
final class Profile {
    private final double[] y;
    private final double[] x;
    private final double[] slope;

    /** Stations are heights and what is there, in any order; at least two. */
    Profile(Map<Double, Double> stations) {
        TreeMap<Double, Double> rising = new TreeMap<>(stations);
        y = rising.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        x = rising.values().stream().mapToDouble(Double::doubleValue).toArray();
        slope = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            slope[i] = i == 0 ? rise(0) : i == y.length - 1 ? rise(i - 1) : between(i);
        }
    }

    private double rise(int i) {
        return (x[i + 1] - x[i]) / (y[i + 1] - y[i]);
    }

    private double between(int i) {
        double below = rise(i - 1);
        double above = rise(i);
        double lower = y[i] - y[i - 1];
        double upper = y[i + 1] - y[i];
        double parabola = (upper * below + lower * above) / (lower + upper);
        double steepest = 3 * Math.min(Math.abs(below), Math.abs(above));
        return Math.copySign(Math.min(Math.abs(parabola), steepest), parabola);
    }

    /** What is there at a height; beyond the ends what is at the end. */
    double at(double height) {
        if (height <= y[0]) {
            return x[0];
        }
        if (height >= y[y.length - 1]) {
            return x[y.length - 1];
        }
        int i = 0;
        while (height > y[i + 1]) {
            i++;
        }
        double h = y[i + 1] - y[i];
        double t = (height - y[i]) / h;
        double u = 1 - t;
        return u * u * (1 + 2 * t) * x[i]
                + t * t * (3 - 2 * t) * x[i + 1]
                + u * u * t * h * slope[i]
                - t * t * u * h * slope[i + 1];
    }

    /** The line from its highest station down to its lowest. */
    List<Segment> downwards() {
        List<Segment> line = new ArrayList<>();
        for (int i = y.length - 2; i >= 0; i--) {
            double third = (y[i + 1] - y[i]) / 3;
            line.add(new Cubic(
                    new Point(x[i + 1], y[i + 1]),
                    new Point(x[i + 1] - slope[i + 1] * third, y[i + 1] - third),
                    new Point(x[i] + slope[i] * third, y[i] + third),
                    new Point(x[i], y[i])));
        }
        return line;
    }

    /** The line from its lowest station up to its highest. */
    List<Segment> upwards() {
        List<Segment> line = new ArrayList<>();
        for (Segment stroke : downwards()) {
            line.add(0, stroke.reversed());
        }
        return line;
    }
}
