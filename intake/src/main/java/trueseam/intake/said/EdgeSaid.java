package trueseam.intake.said;

import java.util.OptionalDouble;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Point;

/**
 * A stretch of a piece's outline is this edge: two corners and a name. It names an edge anew, joins edges (all corners between its ends go)
 * and parts one (its ends become corners).
 *
 * @param name what it is called
 * @param role what it is
 * @param from one end, in the piece's frame
 * @param to the other end
 * @param longMm how long it is, mm: which of the two ways round is meant; empty: the shorter one
 */
public record EdgeSaid(String name, EdgeRole role, Point from, Point to, OptionalDouble longMm) {

    /** Ends nearer than this are one corner. */
    private static final double SAME_MM = 1;

    /** An edge has a name. */
    public EdgeSaid {
        name = name.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("an edge without a name");
        }
    }

    /**
     * Whether it runs between the same corners, the same way round.
     *
     * @param other another
     * @return true within 1 mm
     */
    public boolean isSameStretch(EdgeSaid other) {
        boolean ends = (from.isNear(other.from, SAME_MM) && to.isNear(other.to, SAME_MM))
                || (from.isNear(other.to, SAME_MM) && to.isNear(other.from, SAME_MM));
        boolean way = longMm.isEmpty()
                || other.longMm.isEmpty()
                || Math.abs(longMm.getAsDouble() - other.longMm.getAsDouble()) < SAME_MM;
        return ends && way;
    }

    /**
     * Whether it says the same.
     *
     * @param other another
     * @return true if stretch, name and role are the same
     */
    public boolean isSame(EdgeSaid other) {
        return name.equals(other.name) && role == other.role && isSameStretch(other);
    }
}
