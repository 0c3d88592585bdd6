package trueseam.geometry;

/**
 * Where a sheet of paper lies after it was turned and shifted: a rotation about the origin followed by a shift. It
 * cannot hold a scale, a shear or a mirroring, so whatever is traced after a motion has the length and the shape that
 * it had before.
 *
 * @param cos cosine of the turn
 * @param sin sine of the turn; {@code cos² + sin² = 1}
 * @param dx shift to the right after the turn, mm
 * @param dy shift up after the turn, mm
 */
public record Motion(double cos, double sin, double dx, double dy) {

    /** The paper lies where it lay. */
    public static final Motion NONE = new Motion(1, 0, 0, 0);

    /** Rounding that a chain of turns may collect before it is no rotation any more. */
    private static final double UNIT_ERROR = 1e-12;

    // Refuses whatever is no rotation.
    // Throws GeometryException if cosine and sine are not of one angle or the shift is not finite
    public Motion {
        double r = Math.hypot(cos, sin);
        if (!(Math.abs(r - 1) <= UNIT_ERROR && Math.abs(dx) <= Double.MAX_VALUE && Math.abs(dy) <= Double.MAX_VALUE)) {
            throw new GeometryException("cos " + cos + ", sin " + sin + ", shift (" + dx + ", " + dy
                    + ") is no turn and shift of a sheet of paper.");
        }
        cos = cos / r;
        sin = sin / r;
    }

    /**
     * A shift without a turn.
     *
     * @param by the displacement, mm
     * @return the motion
     */
    public static Motion slide(Vec by) {
        return new Motion(1, 0, by.x(), by.y());
    }

    /**
     * A turn about a pin.
     *
     * @param pin the point that stays
     * @param angleRad anticlockwise
     * @return the motion
     */
    public static Motion pivot(Point pin, double angleRad) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return new Motion(c, s, pin.x() - c * pin.x() + s * pin.y(), pin.y() - s * pin.x() - c * pin.y());
    }

    /**
     * Turns about the pin until {@code q} has moved {@code acrossMm} across the grain.
     *
     * <pre>{@code
     *    q --d--> q'      |pq| = |pq'|: the traced line keeps its shape.
     *     \      /        d beyond the circle: no such angle.
     *      \    /         Of the two angles, the smaller turn.
     *        p            p is the pin, a crossing of stitching lines.
     * }</pre>
     *
     * With v = q - p, r = |v|, phi = atan2(v.y, v.x): the smallest |theta| with r cos(phi + theta) = v.x + d. Source:
     * common practice; the angle from ARCHITECTURE.md, "Pivot".
     *
     * @param pin the pin, where the paper lies now
     * @param q a point of the paper, where it lies now
     * @param acrossMm signed, mm, positive to the right
     * @return a rotation about the pin that moves q by acrossMm across the grain, within 1e-9 mm
     * @throws OutOfReachException with pin, point and the largest reachable amount in mm
     */
    public static Motion pivotAcross(Point pin, Point q, double acrossMm) {
        Vec v = q.minus(pin);
        double r = v.length();
        double wanted = v.x() + acrossMm;
        if (!(Math.abs(wanted) <= r)) {
            double reach = wanted > 0 ? r - v.x() : -r - v.x();
            throw new OutOfReachException(pin, q, acrossMm, reach);
        }
        if (acrossMm == 0) {
            return NONE;
        }
        double phi = Math.atan2(v.y(), v.x());
        double opening = Math.acos(wanted / r);
        double one = Math.IEEEremainder(opening - phi, 2 * Math.PI);
        double other = Math.IEEEremainder(-opening - phi, 2 * Math.PI);
        return pivot(pin, Math.abs(one) <= Math.abs(other) ? one : other);
    }

    /**
     * Where a point of the paper comes to lie.
     *
     * @param p a point of the paper before the motion
     * @return the same point after it
     */
    public Point apply(Point p) {
        return new Point(cos * p.x() - sin * p.y() + dx, sin * p.x() + cos * p.y() + dy);
    }

    /**
     * How a direction of the paper comes to lie.
     *
     * @param v a direction before the motion
     * @return the same direction after it
     */
    public Vec apply(Vec v) {
        return new Vec(cos * v.x() - sin * v.y(), sin * v.x() + cos * v.y());
    }

    /**
     * This motion, and then another.
     *
     * @param next what is done afterwards
     * @return both as one motion
     */
    public Motion then(Motion next) {
        return new Motion(
                next.cos * cos - next.sin * sin,
                next.sin * cos + next.cos * sin,
                next.cos * dx - next.sin * dy + next.dx,
                next.sin * dx + next.cos * dy + next.dy);
    }

    /**
     * The way back.
     *
     * @return the motion that undoes this one
     */
    public Motion inverse() {
        return new Motion(cos, -sin, -cos * dx - sin * dy, sin * dx - cos * dy);
    }

    /**
     * How far the paper is turned.
     *
     * @return radians in (-pi, pi], anticlockwise
     */
    public double turnRad() {
        return Math.atan2(sin, cos);
    }

    /**
     * Whether the paper still lies where it lay.
     *
     * @param toleranceMm how far a point within a metre of the origin may have moved, mm
     * @return true if nothing near moved farther than that
     */
    public boolean isNone(double toleranceMm) {
        return Math.hypot(dx, dy) + 1000 * Math.abs(turnRad()) <= toleranceMm;
    }
}
