package trueseam.intake.said;

import trueseam.geometry.Point;

/**
 * Whether what is drawn at a place is a dart or a notch.
 *
 * @param what which of the two
 * @param at the tip of the dart, or the middle of the notch, in the piece's frame
 * @param is whether it is one
 */
public record MarkSaid(What what, Point at, boolean is) {

    /** Places nearer than this are one. */
    private static final double SAME_MM = 2;

    /** What may be drawn. */
    public enum What {
        /** Two lines that meet at a tip. */
        DART,
        /** A short line on the edge. */
        NOTCH
    }

    /**
     * Whether it is about the same thing.
     *
     * @param other another
     * @return true within 2 mm
     */
    public boolean isSameMark(MarkSaid other) {
        return what == other.what && at.isNear(other.at, SAME_MM);
    }
}
