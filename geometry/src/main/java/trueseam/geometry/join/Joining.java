package trueseam.geometry.join;

import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Smooth curves between two ends.
 *
 * <pre>{@code
 *          . - ' ' - .
 *      . '             ' .      theta: from the chord to the start direction,
 *    /  theta       phi   \     phi:   from the end direction to the chord;
 *   a----------------------b    both anticlockwise, so a circular arc has theta = phi.
 * }</pre>
 *
 * The handles are those of J. D. Hobby, "Smooth, easy to compute interpolating splines", Discrete and Computational
 * Geometry 1 (1986), section 4: a closed form that stays near the curve of least bending. With theta = phi it gives the
 * usual circular arc exactly (handle 4/3 tan(turn / 4) of the radius), with both 0 a third of the chord.
 */
public final class Joining {

    /** A handle is never longer than so many chords: Hobby's form grows without end when both ends point backwards. */
    private static final double LONGEST_HANDLE = 4.0 / 3;

    /** Below this the chord has no direction: the rounding allowed between the strokes of a path. */
    private static final double SAME_PLACE_MM = 1e-6;

    private Joining() {}

    /**
     * The gentle curve from one end to the other. With ends up to 60 degrees off the chord its bending (the integral of
     * squared curvature) is within 2 % of the best that any two handle lengths give (searched by brute force in
     * JoiningTest).
     *
     * @param a where it begins
     * @param startDir the direction in which it leaves
     * @param b where it ends
     * @param endDir the direction of travel in which it arrives
     * @return the curve
     * @throws GeometryException if the points are the same place or a direction has no length
     */
    public static Cubic smooth(Point a, Vec startDir, Point b, Vec endDir) {
        Vec startUnit = startDir.unit();
        Vec endUnit = endDir.unit();
        Vec chord = chord(a, b);
        double theta = chord.angleTo(startUnit);
        double phi = endUnit.angleTo(chord);
        double third = chord.length() / 3;
        double first = Math.min(velocity(theta, phi), 3 * LONGEST_HANDLE);
        double last = Math.min(velocity(phi, theta), 3 * LONGEST_HANDLE);
        return Cubic.of(a, startUnit.times(third * first), endUnit.times(-third * last), b);
    }

    /**
     * The gentle curve that leaves in a given direction and is free to arrive as it likes: the end direction turns half
     * as far the other way, as an elastic strip held at the start and only touched at the end would (theory of thin beams).
     *
     * @param a where it begins
     * @param startDir the direction in which it leaves
     * @param b where it ends
     * @return the curve
     * @throws GeometryException if the points are the same place or the direction has no length
     */
    public static Cubic tangentFromStart(Point a, Vec startDir, Point b) {
        Vec chord = chord(a, b);
        double theta = chord.angleTo(startDir.unit());
        return smooth(a, startDir, b, chord.turned(-theta / 2));
    }

    /**
     * The gentle curve that is free to leave as it likes and arrives in a given direction; {@link #tangentFromStart}
     * walked from its end.
     *
     * @param a where it begins
     * @param b where it ends
     * @param endDir the direction of travel in which it arrives
     * @return the curve
     * @throws GeometryException if the points are the same place or the direction has no length
     */
    public static Cubic tangentToEnd(Point a, Point b, Vec endDir) {
        return tangentFromStart(b, endDir.reversed(), a).reversed();
    }

    /**
     * The gentlest curve of a given length: both handles of {@link #smooth} made longer or shorter in the same proportion.
     *
     * @param a where it begins
     * @param startDir the direction in which it leaves
     * @param b where it ends
     * @param endDir the direction of travel in which it arrives
     * @param lengthMm wanted length, mm
     * @return the curve, within 1e-9 mm of the length, without loop or cusp
     * @throws LengthOutOfReachException if no such curve has that length, with the shortest and the longest
     * @throws GeometryException if the points are the same place or a direction has no length
     */
    public static Cubic smoothOfLength(Point a, Vec startDir, Point b, Vec endDir, double lengthMm) {
        return new LengthSearch(a, startDir.unit(), b, endDir.unit()).of(lengthMm);
    }

    private static Vec chord(Point a, Point b) {
        Vec chord = b.minus(a);
        if (!(chord.length() > SAME_PLACE_MM)) {
            throw new GeometryException(
                    "A smooth line cannot join " + a + " to itself; leave the two ends as one point instead.");
        }
        return chord;
    }

    /** Hobby's rho: the handle at the end of angle {@code near}, in thirds of the chord. */
    private static double velocity(double near, double far) {
        double sinNear = Math.sin(near);
        double sinFar = Math.sin(far);
        double cosNear = Math.cos(near);
        double cosFar = Math.cos(far);
        double bend = Math.sqrt(2) * (sinNear - sinFar / 16) * (sinFar - sinNear / 16) * (cosNear - cosFar);
        double root = Math.sqrt(5);
        double under = 1 + (root - 1) / 2 * cosNear + (3 - root) / 2 * cosFar;
        double rho = (2 + bend) / under;
        return rho > 0 ? rho : Double.MAX_VALUE; // both ends point straight back: 2 / 0
    }
}
