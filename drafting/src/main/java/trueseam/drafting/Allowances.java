package trueseam.drafting;

/**
 * How much cloth is left outside the stitching lines.
 *
 * @param seamMm at every seam and edge, mm
 * @param hemMm at the lower edge of skirt, dress and trousers and at the wrist, mm
 */
public record Allowances(double seamMm, double hemMm) {

    /** The allowance of US home patterns: 5/8 in. */
    private static final double FIVE_EIGHTHS_MM = 15.875;

    /**
     * As US home patterns have it: 5/8 in at seams, 1 1/2 in at hems (common practice).
     *
     * @return the allowances
     */
    public static Allowances inches() {
        return new Allowances(FIVE_EIGHTHS_MM, 38.1);
    }

    /**
     * As metric houses have it: 15 mm at seams, 40 mm at hems (common practice).
     *
     * @return the allowances
     */
    public static Allowances metric() {
        return new Allowances(15, 40);
    }
}
