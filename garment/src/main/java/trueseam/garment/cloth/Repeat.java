package trueseam.garment.cloth;

/**
 * The height of a plaid, or of any figure that has to match at the seams: how far along the cloth it begins again.
 *
 * @param mm along the selvage, mm, above zero
 */
public record Repeat(double mm) {

    /**
     * Checks the length.
     *
     * @param mm as of the record
     * @throws IllegalArgumentException when it is not a length above zero
     */
    public Repeat {
        if (!(mm > 0) || Double.isInfinite(mm)) {
            throw new IllegalArgumentException("a repeat of " + mm + " mm is none; give a length above zero");
        }
    }

    /**
     * How much more cloth is bought so that the figure can be matched: each piece that lies above or below another may have to be moved
     * by one repeat. Source: web:plaid (1 1/4 in by two pieces 2 1/2 in; 4 1/4 in by two pieces 8 1/2 in).
     *
     * @param stacked how many pieces lie one above another along the cloth
     * @return mm of cloth beyond what a plain one would take
     * @throws IllegalArgumentException for fewer than none
     */
    public double surchargeMm(int stacked) {
        if (stacked < 0) {
            throw new IllegalArgumentException("no layout has " + stacked + " pieces one above another");
        }
        return stacked * mm;
    }
}
