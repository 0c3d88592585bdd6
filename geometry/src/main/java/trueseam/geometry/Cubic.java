package trueseam.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A cubic Bezier curve: it leaves its start towards the first handle and reaches its end from the second.
 *
 * @param start where it begins
 * @param handle1 the handle of the start
 * @param handle2 the handle of the end
 * @param end where it ends
 */
public record Cubic(Point start, Point handle1, Point handle2, Point end) implements Segment {

    /** Half a unit in the last place of 1, for each of the two coordinates that a difference is made of. */
    private static final double ROUNDING = 0x1p-52;

    /**
     * The curve with given end directions whose handles have given lengths.
     *
     * @param start where it begins
     * @param startHandle from the start to its handle, mm
     * @param endHandle from the end back to its handle, mm
     * @param end where it ends
     * @return the curve
     */
    public static Cubic of(Point start, Vec startHandle, Vec endHandle, Point end) {
        return new Cubic(start, start.plus(startHandle), end.plus(endHandle), end);
    }

    @Override
    public Point at(double t) {
        if (t == 0) {
            return start;
        }
        if (t == 1) {
            return end;
        }
        double s = 1 - t;
        double a = s * s * s;
        double b = 3 * s * s * t;
        double c = 3 * s * t * t;
        double d = t * t * t;
        return new Point(
                a * start.x() + b * handle1.x() + c * handle2.x() + d * end.x(),
                a * start.y() + b * handle1.y() + c * handle2.y() + d * end.y());
    }

    @Override
    public Vec derivative(double t) {
        double s = 1 - t;
        double a = 3 * s * s;
        double b = 6 * s * t;
        double c = 3 * t * t;
        return new Vec(
                a * (handle1.x() - start.x()) + b * (handle2.x() - handle1.x()) + c * (end.x() - handle2.x()),
                a * (handle1.y() - start.y()) + b * (handle2.y() - handle1.y()) + c * (end.y() - handle2.y()));
    }

    @Override
    public Vec secondDerivative(double t) {
        double s = 6 * (1 - t);
        double u = 6 * t;
        return new Vec(
                s * (handle2.x() - 2 * handle1.x() + start.x()) + u * (end.x() - 2 * handle2.x() + handle1.x()),
                s * (handle2.y() - 2 * handle1.y() + start.y()) + u * (end.y() - 2 * handle2.y() + handle1.y()));
    }

    @Override
    public Vec tangent(double t) {
        Vec d = derivative(t);
        // A handle on its end leaves no first derivative there; the next control point gives the direction.
        if (d.length() > 1e-9 * (1 + start.distanceTo(end))) {
            return d.unit();
        }
        Point from = t < 0.5 ? start : handle1.isNear(end, 1e-12) ? start : handle1;
        Point to = t < 0.5 ? (handle2.isNear(start, 1e-12) ? end : handle2) : end;
        return to.minus(from).unit();
    }

    @Override
    public double length() {
        return ArcLength.of(this, 0, 1);
    }

    @Override
    public double lengthTo(double t) {
        return ArcLength.of(this, 0, t);
    }

    @Override
    public double parameterAt(double alongMm) {
        return ArcLength.parameterAt(this, alongMm, length());
    }

    @Override
    public Cubic between(double t0, double t1) {
        if (t0 == 0 && t1 == 1) {
            return this;
        }
        Point a = at(t0);
        Point d = at(t1);
        double third = (t1 - t0) / 3;
        return new Cubic(
                a, a.plus(derivative(t0).times(third)), d.minus(derivative(t1).times(third)), d);
    }

    @Override
    public Cubic reversed() {
        return new Cubic(end, handle2, handle1, start);
    }

    @Override
    public Cubic moved(Motion m) {
        return new Cubic(m.apply(start), m.apply(handle1), m.apply(handle2), m.apply(end));
    }

    @Override
    public Bounds bounds() {
        Bounds box = Bounds.of(start, end);
        if (!isBetween(start.x(), handle1.x(), handle2.x(), end.x())) {
            for (double t : extremes(start.x(), handle1.x(), handle2.x(), end.x())) {
                box = box.with(at(t));
            }
        }
        if (!isBetween(start.y(), handle1.y(), handle2.y(), end.y())) {
            for (double t : extremes(start.y(), handle1.y(), handle2.y(), end.y())) {
                box = box.with(at(t));
            }
        }
        return box;
    }

    /** Whether the handles lie between the ends, so that the curve does too. */
    private static boolean isBetween(double p0, double p1, double p2, double p3) {
        double least = Math.min(p0, p3);
        double most = Math.max(p0, p3);
        return least <= p1 && p1 <= most && least <= p2 && p2 <= most;
    }

    /** Where the derivative of one coordinate is zero inside (0, 1). */
    private static List<Double> extremes(double p0, double p1, double p2, double p3) {
        double a = p3 - 3 * p2 + 3 * p1 - p0;
        double b = 2 * (p2 - 2 * p1 + p0);
        double c = p1 - p0;
        List<Double> found = new ArrayList<>(2);
        // a t² + b t + c = 0 in the form that does not cancel.
        double disc = b * b - 4 * a * c;
        if (disc >= 0) {
            double q = -(b + Math.copySign(Math.sqrt(disc), b)) / 2;
            addInside(found, q / a);
            addInside(found, c / q);
        }
        return found;
    }

    private static void addInside(List<Double> found, double t) {
        if (0 < t && t < 1) {
            found.add(t);
        }
    }

    @Override
    public double areaTerm() {
        // Exact integral of (x dy - y dx) / 2 for a cubic in Bernstein form.
        return (6 * cross(start, handle1)
                        + 3 * cross(start, handle2)
                        + cross(start, end)
                        + 3 * cross(handle1, handle2)
                        + 3 * cross(handle1, end)
                        + 6 * cross(handle2, end))
                / 20;
    }

    private static double cross(Point p, Point q) {
        return p.x() * q.y() - p.y() * q.x();
    }

    @Override
    public List<Double> crossings(Point through, Vec direction) {
        double a = aside(start, through, direction);
        double b = aside(handle1, through, direction);
        double c = aside(handle2, through, direction);
        double d = aside(end, through, direction);
        if ((a > 0 && b > 0 && c > 0 && d > 0) || (a < 0 && b < 0 && c < 0 && d < 0)) {
            return List.of();
        }
        return BernsteinRoots.of(a, b, c, d);
    }

    /** On which side of the line a point lies; a value below its own rounding is on it, lest a touching end is searched for. */
    private static double aside(Point p, Point through, Vec direction) {
        double dx = p.x() - through.x();
        double dy = p.y() - through.y();
        double first = direction.x() * dy;
        double second = direction.y() * dx;
        double coordinates = Math.abs(p.x()) + Math.abs(p.y()) + Math.abs(through.x()) + Math.abs(through.y());
        double rounding = ROUNDING * (Math.abs(direction.x()) + Math.abs(direction.y())) * coordinates;
        return Math.abs(first - second) <= rounding ? 0 : first - second;
    }

    /**
     * Where the curve passes the same point twice. With {@code at(t) = a t³ + b t² + c t + start}, two parameters t and u
     * meet when {@code (p² - q) a + p b + c = 0} with p = t + u and q = t u: linear in p once crossed with a.
     *
     * @return the two parameters in order, the same one twice for a cusp; empty if there is no such point, and also for
     *     curves that lie within a straight line
     */
    public List<Double> selfCrossing() {
        Vec c = handle1.minus(start).times(3);
        Vec b = handle2.minus(handle1).times(3).minus(c);
        Vec a = end.minus(start).minus(c).minus(b);
        double bend = b.cross(a);
        if (bend == 0) {
            return List.of();
        }
        double p = -c.cross(a) / bend;
        double q = p * p + b.times(p).plus(c).dot(a) / a.dot(a);
        double disc = p * p - 4 * q;
        double t = (p - Math.sqrt(Math.max(0, disc))) / 2;
        double u = p - t;
        // Rounding of a cusp or of a curve that ends where it began is inside; a true miss is not that near.
        double near = 1e-12;
        return disc >= -near && -near <= t && u <= 1 + near ? List.of(Math.max(0, t), Math.min(1, u)) : List.of();
    }
}
