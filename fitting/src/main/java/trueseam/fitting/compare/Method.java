package trueseam.fitting.compare;

/** Against what the body is compared. */
public enum Method {
    /** Body against the body measures of the chosen size: the pattern's own ease stays. */
    TABLE,
    /** Body plus ease against the measured flat pattern. */
    FLAT
}
