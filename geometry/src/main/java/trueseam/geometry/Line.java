package trueseam.geometry;

import java.util.List;

/**
 * A straight stroke between two points. The two may be the same point: then it has no length and no direction.
 *
 * @param start where it begins
 * @param end where it ends
 */
public record Line(Point start, Point end) implements Segment {

    @Override
    public Point at(double t) {
        return t == 1 ? end : start.towards(end, t);
    }

    @Override
    public Vec derivative(double t) {
        return end.minus(start);
    }

    @Override
    public Vec secondDerivative(double t) {
        return Vec.ZERO;
    }

    @Override
    public Vec tangent(double t) {
        return end.minus(start).unit();
    }

    @Override
    public double length() {
        return start.distanceTo(end);
    }

    @Override
    public double lengthTo(double t) {
        return t * length();
    }

    @Override
    public double parameterAt(double alongMm) {
        double whole = length();
        return whole > 0 ? Math.min(1, Math.max(0, alongMm / whole)) : 0;
    }

    @Override
    public Line between(double t0, double t1) {
        return new Line(at(t0), at(t1));
    }

    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Line moved(Motion m) {
        return new Line(m.apply(start), m.apply(end));
    }

    @Override
    public Bounds bounds() {
        return Bounds.of(start, end);
    }

    @Override
    public double areaTerm() {
        return (start.x() * end.y() - end.x() * start.y()) / 2;
    }

    @Override
    public List<Double> crossings(Point through, Vec direction) {
        double a = direction.cross(start.minus(through));
        double b = direction.cross(end.minus(through));
        if (a == b) {
            return List.of();
        }
        double t = a / (a - b);
        return 0 <= t && t <= 1 ? List.of(t) : List.of();
    }
}
