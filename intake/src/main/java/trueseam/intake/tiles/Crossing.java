package trueseam.intake.tiles;

import trueseam.intake.drawing.Look;

/**
 * A line that runs over the edge of a page's own part.
 *
 * @param at where, along the edge, mm
 * @param angleRad its direction there, 0 to pi: it may be walked either way
 * @param look how it is drawn
 */
record Crossing(double at, double angleRad, Look look) {

    /** Cut lines end where they were cut to a hundredth; what is farther apart is another line, mm. */
    static final double NEAR_MM = 0.3;

    private static final double TURN_RAD = Math.toRadians(8);

    boolean goesOnIn(Crossing other) {
        return Math.abs(at - other.at) <= NEAR_MM
                && Math.abs(Math.IEEEremainder(angleRad - other.angleRad, Math.PI)) <= TURN_RAD
                && look.equals(other.look);
    }
}
