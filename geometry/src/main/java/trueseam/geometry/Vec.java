package trueseam.geometry;

/**
 * A displacement, or a direction with a length.
 *
 * @param x millimetres to the right
 * @param y millimetres up
 */
public record Vec(double x, double y) {

    /** Between these a square has lost nothing to underflow or overflow; the plain root is several times faster. */
    private static final double SAFE_BELOW = 1e-280;

    private static final double SAFE_ABOVE = 1e300;

    /** No displacement. */
    public static final Vec ZERO = new Vec(0, 0);

    // Refuses what is no number.
    // Throws GeometryException if a component is not finite
    public Vec {
        if (!(Math.abs(x) <= Double.MAX_VALUE && Math.abs(y) <= Double.MAX_VALUE)) {
            throw new GeometryException("A displacement of (" + x + ", " + y + ") is not finite.");
        }
        x = x + 0.0;
        y = y + 0.0;
    }

    /**
     * The direction at an angle.
     *
     * @param angleRad anticlockwise from the x axis
     * @return the unit vector
     */
    public static Vec atAngle(double angleRad) {
        return new Vec(Math.cos(angleRad), Math.sin(angleRad));
    }

    /**
     * The sum of two displacements.
     *
     * @param v the other displacement
     * @return this and then {@code v}
     */
    public Vec plus(Vec v) {
        return new Vec(x + v.x, y + v.y);
    }

    /**
     * The difference of two displacements.
     *
     * @param v the other displacement
     * @return this less {@code v}
     */
    public Vec minus(Vec v) {
        return new Vec(x - v.x, y - v.y);
    }

    /**
     * A multiple.
     *
     * @param factor how many times
     * @return this, {@code factor} times as long
     */
    public Vec times(double factor) {
        return new Vec(x * factor, y * factor);
    }

    /**
     * The way back.
     *
     * @return the opposite displacement
     */
    public Vec reversed() {
        return new Vec(-x, -y);
    }

    /**
     * How far it leads.
     *
     * @return length, mm
     */
    public double length() {
        double square = x * x + y * y;
        return SAFE_BELOW < square && square < SAFE_ABOVE ? Math.sqrt(square) : Math.hypot(x, y);
    }

    /**
     * The inner product.
     *
     * @param v the other displacement
     * @return mm², zero when square to each other
     */
    public double dot(Vec v) {
        return x * v.x + y * v.y;
    }

    /**
     * The signed area of the parallelogram spanned.
     *
     * @param v the other displacement
     * @return mm², positive if {@code v} lies to the left
     */
    public double cross(Vec v) {
        return x * v.y - y * v.x;
    }

    /**
     * The direction alone.
     *
     * @return this at length 1
     * @throws GeometryException if the displacement has no length
     */
    public Vec unit() {
        double r = length();
        if (!(r > 0)) {
            throw new GeometryException("A displacement of no length has no direction.");
        }
        return new Vec(x / r, y / r);
    }

    /**
     * Square to this, to the left.
     *
     * @return this turned a quarter anticlockwise
     */
    public Vec left() {
        return new Vec(-y, x);
    }

    /**
     * Square to this, to the right.
     *
     * @return this turned a quarter clockwise
     */
    public Vec right() {
        return new Vec(y, -x);
    }

    /**
     * The direction as an angle.
     *
     * @return radians in (-pi, pi], anticlockwise from the x axis
     */
    public double angle() {
        return Math.atan2(y, x);
    }

    /**
     * This turned.
     *
     * @param angleRad anticlockwise
     * @return the turned displacement, of the same length
     */
    public Vec turned(double angleRad) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return new Vec(c * x - s * y, s * x + c * y);
    }

    /**
     * The turn from this direction to another.
     *
     * @param v the other direction
     * @return radians in (-pi, pi], anticlockwise positive
     */
    public double angleTo(Vec v) {
        return Math.atan2(cross(v), dot(v));
    }
}
