package trueseam.geometry;

/**
 * A place on the paper. Points and displacements ({@link Vec}) hold the same two numbers but are two types: a point
 * less a point is a displacement, and a point plus a point does not exist.
 *
 * @param x millimetres to the right
 * @param y millimetres up
 */
public record Point(double x, double y) {

    /** The largest coordinate that is taken for a drawing: one kilometre. Anything beyond is a mistake of units. */
    public static final double LIMIT_MM = 1e6;

    /** The point (0, 0). */
    public static final Point ORIGIN = new Point(0, 0);

    // Refuses what cannot be a place on paper.
    // Throws GeometryException if a coordinate is not a number, infinite or beyond {@link #LIMIT_MM}
    public Point {
        if (!(Math.abs(x) <= LIMIT_MM && Math.abs(y) <= LIMIT_MM)) {
            throw new GeometryException("A point at (" + x + ", " + y
                    + ") mm is no place on paper: coordinates must be numbers of at most 1,000,000 mm.");
        }
        x = x + 0.0; // -0.0 and 0.0 are one place
        y = y + 0.0;
    }

    /**
     * The point reached by a displacement.
     *
     * @param v the displacement, mm
     * @return this point moved by {@code v}
     */
    public Point plus(Vec v) {
        return new Point(x + v.x(), y + v.y());
    }

    /**
     * The point from which a displacement leads here.
     *
     * @param v the displacement, mm
     * @return this point moved back by {@code v}
     */
    public Point minus(Vec v) {
        return new Point(x - v.x(), y - v.y());
    }

    /**
     * The displacement that leads from another point to this one.
     *
     * @param from the start
     * @return this less {@code from}, mm
     */
    public Vec minus(Point from) {
        return new Vec(x - from.x, y - from.y);
    }

    /**
     * The straight distance.
     *
     * @param other the other point
     * @return distance in mm, never negative
     */
    public double distanceTo(Point other) {
        double dx = x - other.x; // no larger than 2e6, so the squares need no care
        double dy = y - other.y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /**
     * The point part of the way to another.
     *
     * @param other the point at share 1
     * @param share 0 stays here, 1 arrives; values outside run on along the line
     * @return the point between
     */
    public Point towards(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }

    /**
     * Whether two points are the same place for a purpose.
     *
     * @param other the other point
     * @param toleranceMm how far apart they may be, mm
     * @return true if no farther apart than the tolerance
     */
    public boolean isNear(Point other, double toleranceMm) {
        return distanceTo(other) <= toleranceMm;
    }
}
