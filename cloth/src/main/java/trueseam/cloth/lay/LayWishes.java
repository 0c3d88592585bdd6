package trueseam.cloth.lay;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.cloth.packing.Placed;

/**
 * What whoever lays the pieces wants.
 *
 * @param gapMm the least distance between cutting lines, mm
 * @param tiltDegrees by how much a piece that does not lie at the fold may be turned off its grain, degrees; 0 for not at all
 * @param only the names of the pieces to lay; empty for all that belong to the stuff
 * @param matched the names of the seams at which stripes are to run on; nothing said: all
 * @param byHand what stays where it was put: as a layout of the same plan gave it, or moved
 */
public record LayWishes(
        double gapMm, double tiltDegrees, Set<String> only, Optional<Set<String>> matched, List<Placed> byHand) {

    /** The most that a piece may be tilted: more is seen in how the garment hangs (common practice). */
    public static final double MOST_TILT_DEGREES = 5;

    /** The least gap: below it two cuts become one. */
    public static final double LEAST_GAP_MM = 0;

    /** Room for scissors between two pieces, mm (common practice). */
    public static final double USUAL_GAP_MM = 4;

    /** Checks. */
    public LayWishes {
        only = Set.copyOf(only);
        matched = matched.map(Set::copyOf);
        byHand = List.copyOf(byHand);
        if (!(gapMm >= LEAST_GAP_MM && gapMm <= 100)) {
            throw new IllegalArgumentException("A gap of " + gapMm + " mm is not possible; give 0 to 100 mm.");
        }
        if (!(tiltDegrees >= 0 && tiltDegrees <= MOST_TILT_DEGREES)) {
            throw new IllegalArgumentException("A piece may be tilted by 0 to " + MOST_TILT_DEGREES
                    + " degrees, and not by " + tiltDegrees + ": more shows in how the garment hangs.");
        }
    }

    /**
     * As it is usually done.
     *
     * @return the usual gap, no tilt, all pieces, stripes matched at all seams, nothing by hand
     */
    public static LayWishes usual() {
        return new LayWishes(USUAL_GAP_MM, 0, Set.of(), Optional.empty(), List.of());
    }

    /**
     * With some laid by hand.
     *
     * @param laid what stays where it is
     * @return the wishes
     */
    public LayWishes withByHand(List<Placed> laid) {
        return new LayWishes(gapMm, tiltDegrees, only, matched, laid);
    }
}
