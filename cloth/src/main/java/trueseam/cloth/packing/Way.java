package trueseam.cloth.packing;

/**
 * A way in which a piece may lie.
 *
 * @param turnDegrees how far it is turned, degrees counter-clockwise
 * @param mirrored whether it lies on its face, turned over about the lengthwise grain before it is turned
 */
public record Way(double turnDegrees, boolean mirrored) {

    /** As it was drawn. */
    public static final Way UPRIGHT = new Way(0, false);
}
