package trueseam.garment.pattern;

import trueseam.geometry.Point;

/**
 * A named point inside the piece, such as the bust point. Points of the outline are corners of edges and need no
 * landmark.
 *
 * @param name for example {@value #BUST_POINT}
 * @param at where it is
 */
public record Landmark(String name, Point at) {

    /** The most forward point of the bust. */
    public static final String BUST_POINT = "bust point";

    /** The most prominent point of the shoulder blade. */
    public static final String BLADE_POINT = "shoulder blade point";

    /** Where the shoulder ends in a raglan sleeve, which has no seam there. */
    public static final String SHOULDER_POINT = "shoulder point";
}
