package trueseam.garment.measure;

/** What a measure is of: a way round, across, along, down, or above the floor. */
public enum MeasureKind {
    /** A closed way round the body or a limb. */
    GIRTH,
    /** From one side to the other, on the surface unless said. */
    WIDTH,
    /** Along the body. */
    LENGTH,
    /** Straight down from one level to another. */
    DEPTH,
    /** Straight up from the floor. */
    HEIGHT
}
