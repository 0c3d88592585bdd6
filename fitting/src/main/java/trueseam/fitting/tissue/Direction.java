package trueseam.fitting.tissue;

import trueseam.geometry.Vec;

/** How a joined line sets out from, or arrives at, the traced line beside it. */
public sealed interface Direction {

    /** The direction that the edge had there, carried with the traced line beside it: corners keep their angle. */
    record AsDrawn() implements Direction {}

    /** Any direction: the line runs as straight as the other end lets it. */
    record Free() implements Direction {}

    /**
     * A given direction on the tissue.
     *
     * @param tangent direction of travel
     */
    record Towards(Vec tangent) implements Direction {}

    /** {@link AsDrawn}. */
    Direction AS_DRAWN = new AsDrawn();

    /** {@link Free}. */
    Direction FREE = new Free();
}
