package trueseam.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Point;

/** A simple polygon as plain numbers, counter-clockwise, the first corner not repeated: what the search works on. */
final class Polygon {

    /** Corners that lie closer together than this part of the extent are one; a corner within it of the line between its neighbours is none. */
    private static final double SAME = 1e-9;

    final double[] x;
    final double[] y;
    final double minX;
    final double minY;
    final double maxX;
    final double maxY;

    private Polygon(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        double loX = Double.POSITIVE_INFINITY;
        double loY = Double.POSITIVE_INFINITY;
        double hiX = Double.NEGATIVE_INFINITY;
        double hiY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            loX = Math.min(loX, x[i]);
            hiX = Math.max(hiX, x[i]);
            loY = Math.min(loY, y[i]);
            hiY = Math.max(hiY, y[i]);
        }
        minX = loX;
        minY = loY;
        maxX = hiX;
        maxY = hiY;
    }

    static Polygon of(List<Point> corners) {
        double extent = 0;
        for (Point p : corners) {
            extent = Math.max(
                    extent,
                    Math.max(
                            Math.abs(p.x() - corners.get(0).x()),
                            Math.abs(p.y() - corners.get(0).y())));
        }
        double tiny = SAME * extent;
        List<Point> kept = new ArrayList<>();
        for (Point p : corners) {
            if (kept.isEmpty() || p.distanceTo(kept.get(kept.size() - 1)) > tiny) {
                kept.add(p);
            }
        }
        for (int i = kept.size() - 1; i >= 0 && kept.size() > 3; i--) {
            Point before = kept.get((i + kept.size() - 1) % kept.size());
            Point after = kept.get((i + 1) % kept.size());
            if (needless(before, kept.get(i), after, tiny)) {
                kept.remove(i);
            }
        }
        Polygon polygon = new Polygon(
                kept.stream().mapToDouble(Point::x).toArray(),
                kept.stream().mapToDouble(Point::y).toArray());
        return polygon.signedArea() < 0 ? polygon.reversed() : polygon;
    }

    /** Whether a corner is the one before it again, or lies on the line from there to the one after. */
    private static boolean needless(Point before, Point at, Point after, double tiny) {
        if (at.distanceTo(before) <= tiny) {
            return true;
        }
        double ux = after.x() - before.x();
        double uy = after.y() - before.y();
        double vx = at.x() - before.x();
        double vy = at.y() - before.y();
        double length = Math.hypot(ux, uy);
        return length > tiny
                && Math.abs(ux * vy - uy * vx) < tiny * length
                && vx * ux + vy * uy > 0
                && (after.x() - at.x()) * ux + (after.y() - at.y()) * uy > 0;
    }

    int size() {
        return x.length;
    }

    double signedArea() {
        double twice = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            twice += x[j] * y[i] - x[i] * y[j];
        }
        return twice / 2;
    }

    /** Turned about the origin; quarter turns are exact. */
    Polygon turned(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        double[] tx = new double[x.length];
        double[] ty = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            tx[i] = c * x[i] - s * y[i];
            ty[i] = s * x[i] + c * y[i];
        }
        return new Polygon(tx, ty);
    }

    static double cos(double degrees) {
        double quarters = Math.IEEEremainder(degrees, 360) / 90;
        return quarters == Math.rint(quarters)
                ? new double[] {1, 0, -1, 0}[(int) quarters & 3]
                : Math.cos(Math.toRadians(degrees));
    }

    static double sin(double degrees) {
        return cos(degrees - 90);
    }

    private Polygon reversed() {
        double[] rx = new double[x.length];
        double[] ry = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            rx[i] = x[x.length - 1 - i];
            ry[i] = y[x.length - 1 - i];
        }
        return new Polygon(rx, ry);
    }
}
