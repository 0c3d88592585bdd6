package trueseam.fitting.alteration;

/** How far down a change of sleeve girth reaches. */
public enum SleeveReach {
    /** The upper arm alone, running out to nothing at the wrist. */
    UPPER_ARM,
    /** The whole sleeve, wrist included. */
    WHOLE
}
