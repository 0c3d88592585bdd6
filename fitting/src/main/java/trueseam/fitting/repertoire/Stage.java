package trueseam.fitting.repertoire;

/** The order of work (common practice): length first, because it moves the levels at which widths are measured. */
public enum Stage {
    /** Lengths at their lines. */
    LENGTH,
    /** Shoulder and neck. */
    SHOULDER,
    /** The back: its roundness, its blades, its hollow. */
    BACK,
    /** The bust, its darts and its point. */
    BUST,
    /** The crotch and the set of the legs. */
    CROTCH,
    /** Widths: bust, waist, hip, thigh, knee, hem. */
    WIDTH,
    /** The sleeve. */
    SLEEVE
}
