package trueseam.garment.body;

/** Where a measure comes from. */
public enum Origin {
    /** A tape (or calliper) on this person, along the path that the measure states. */
    TAPED,
    /** A size table: true of a typical body of that size, not of this person. */
    TABLE,
    /** Another measure of this person used in its place; the note says which. */
    STAND_IN,
    /** Computed or guessed for this person; the note says how. */
    ESTIMATED
}
