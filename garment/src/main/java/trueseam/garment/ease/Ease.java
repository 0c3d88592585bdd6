package trueseam.garment.ease;

/**
 * The ease of a garment at one measure.
 *
 * @param wearingMm room to move, mm; never negative
 * @param designMm what the style adds, mm; negative where a style is cut closer than a body can move in woven cloth
 */
public record Ease(double wearingMm, double designMm) {

    /**
     * Checks the numbers.
     *
     * @param wearingMm as of the record
     * @param designMm as of the record
     * @throws IllegalArgumentException when one is not finite or the wearing ease is negative
     */
    public Ease {
        if (!Double.isFinite(wearingMm) || !Double.isFinite(designMm) || wearingMm < 0) {
            throw new IllegalArgumentException(
                    "no such ease: wearing " + wearingMm + " mm, design " + designMm + " mm");
        }
    }

    /**
     * How a pattern's measured ease divides: design ease is pattern less chart body less wearing ease.
     *
     * @param patternMm the flat pattern, measured, mm
     * @param chartBodyMm the table's body for that size, mm
     * @param wearingMm wearing ease, mm
     * @return the ease; its total is pattern less body
     */
    public static Ease ofPattern(double patternMm, double chartBodyMm, double wearingMm) {
        return new Ease(wearingMm, patternMm - chartBodyMm - wearingMm);
    }

    /**
     * All of it: garment less body.
     *
     * @return mm
     */
    public double totalMm() {
        return wearingMm + designMm;
    }
}
