package trueseam.output.figure;

import trueseam.geometry.Point;

/** The side that the figure is seen from. */
public enum FigureView {
    /** Facing the wearer: her left is on the right of the drawing. */
    FRONT(1),
    /** Behind the wearer: her left is on the left. */
    BACK(-1);

    /** How much lower a place is drawn for each mm that it is nearer: seen from about eight degrees above. */
    static final double FROM_ABOVE = 0.14;

    private final int forward;

    FigureView(int forward) {
        this.forward = forward;
    }

    /** Where a place of the body is drawn: mm, y up, the wearer's middle at x 0. */
    Point seen(Spot spot) {
        return new Point(forward * spot.x(), spot.y() - forward * FROM_ABOVE * spot.z());
    }

    /** Whether the skin there is turned to the viewer; what lies at the very side is seen from both. */
    boolean shows(Spot spot) {
        return forward * spot.facing() > -1e-9;
    }

    /** 1 where the wearer's left is drawn on the right, -1 where it is drawn on the left. */
    int forward() {
        return forward;
    }
}
