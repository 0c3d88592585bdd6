package trueseam.fitting.compare;

/** What is done about a difference. */
public enum Verdict {
    /** Nothing: it does not matter. */
    LEAVE,
    /** The pattern is altered. */
    ALTER,
    /** It matters, and no alteration for it is in the catalogue: it is settled on the trial garment. */
    TRY_ON
}
