package trueseam.garment.body;

import trueseam.garment.measure.Measure;

/**
 * Between what values a measure is usual, and between what values it is possible at all.
 *
 * @param measure the measure
 * @param population whose it is
 * @param impossibleBelowMm below it no body is, mm
 * @param usualFromMm the 0.1 % value of the population, mm
 * @param usualToMm the 99.9 % value, mm
 * @param impossibleAboveMm above it no body is, mm
 * @param source what the limits were computed from
 */
public record Limit(
        Measure measure,
        Population population,
        double impossibleBelowMm,
        double usualFromMm,
        double usualToMm,
        double impossibleAboveMm,
        String source) {

    /**
     * Checks that the four stand in order.
     *
     * @param measure as of the record
     * @param population as of the record
     * @param impossibleBelowMm as of the record
     * @param usualFromMm as of the record
     * @param usualToMm as of the record
     * @param impossibleAboveMm as of the record
     * @param source as of the record
     * @throws IllegalArgumentException when they do not
     */
    public Limit {
        if (!(impossibleBelowMm <= usualFromMm && usualFromMm < usualToMm && usualToMm <= impossibleAboveMm)) {
            throw new IllegalArgumentException("limits of " + measure.term() + " are out of order");
        }
    }
}
