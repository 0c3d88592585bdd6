package trueseam.garment.measure;

/**
 * The groups of measures for which ISO 20685 states the largest allowed mean difference between two ways of measuring.
 *
 * <p>Source: ISO 20685-1:2018 as reproduced in Anthropometry, Apparel Sizing and Design, p. 41. It is a limit on a mean
 * over many people; one reading of one person may miss by more. Which group a measure falls into is our reading: girths
 * of the trunk are large, girths of neck and limbs small, lengths along the body go with the segment lengths.
 */
public enum ErrorGroup {
    /** Straight heights over the floor. */
    HEIGHT(4),
    /** Girths of the neck and the limbs. */
    SMALL_GIRTH(4),
    /** Breadths across the body. */
    BREADTH(4),
    /** Lengths of a part of the body, straight or along it. */
    SEGMENT_LENGTH(5),
    /** Depths of the body. */
    BODY_DEPTH(5),
    /** Girths of the trunk. */
    LARGE_GIRTH(9);

    private final double allowedMm;

    ErrorGroup(double allowedMm) {
        this.allowedMm = allowedMm;
    }

    /**
     * The largest allowed mean difference.
     *
     * @return mm
     */
    public double allowedMm() {
        return allowedMm;
    }
}
