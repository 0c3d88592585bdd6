package trueseam.garment.ease;

/**
 * Wearing ease at one measure.
 *
 * @param minimumMm the least, mm: below it the garment fails
 * @param usualMm what a fitted garment usually has, mm; no less than the minimum
 * @param source who says so
 */
public record EaseRow(double minimumMm, double usualMm, String source) {

    /**
     * Checks the order of the two.
     *
     * @param minimumMm as of the record
     * @param usualMm as of the record
     * @param source as of the record
     * @throws IllegalArgumentException when the usual ease is below the minimum
     */
    public EaseRow {
        if (!(minimumMm <= usualMm)) {
            throw new IllegalArgumentException(
                    "usual ease " + usualMm + " mm is below the minimum " + minimumMm + " mm");
        }
    }
}
