package trueseam.fitting.alteration;

/** What happens to the hem when the hip of a dress or skirt changes. */
public enum HemChoice {
    /** The line below the hip is carried out with it: the hem grows by the same amount and the shape stays. */
    CARRIED,
    /** The line below the hip runs back to the old hem: the sweep stays. */
    LET_BACK
}
