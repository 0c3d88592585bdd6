package trueseam.garment.finding;

/** How grave a finding is, from mildest to gravest (the order of the constants). */
public enum Severity {
    /** Good to know; nothing has to be done. */
    NOTE,
    /** Doubtful: look at it again before cutting. */
    WARNING,
    /** Wrong or unproved: what it is about must not be used as it is. */
    FAILURE
}
