package trueseam.drafting;

import java.util.function.DoubleUnaryOperator;
import trueseam.garment.measure.Measure;
import trueseam.geometry.GeometryException;

/**
 * Corrects a draft until it measures right: each round lays the draft out, measures it and takes the misses off the
 * unknowns. The unknowns of most figures hardly disturb each other, so every round leaves a small part of the misses.
 * Where they swing about instead, only a share of each miss is taken off.
 */
final class Settling {

    /** Far below the 0.1 mm that is promised, so that what is built on it (darts, seams) agrees too. */
    static final double SETTLED_MM = 1e-8;

    private static final int ROUNDS_OF_A_SHARE = 50;
    private static final double LEAST_SHARE = 0.1;

    private Settling() {}

    /**
     * Repeats a round until nothing is missed any more.
     *
     * @param round lays out, measures, corrects by the share it is given; gives the largest miss, mm
     * @param shell what is drafted
     * @param measure what is blamed when it does not settle
     */
    static void of(DoubleUnaryOperator round, String shell, Measure measure) {
        within(SETTLED_MM, round, shell, measure);
    }

    /**
     * Repeats a round until what is missed does not matter for what is decided on it.
     *
     * @param toleranceMm largest miss that may be left
     * @param round lays out, measures, corrects by the share it is given; gives the largest miss, mm
     * @param shell what is drafted
     * @param measure what is blamed when it does not settle
     */
    static void within(double toleranceMm, DoubleUnaryOperator round, String shell, Measure measure) {
        double least = Double.POSITIVE_INFINITY;
        try {
            for (double share = 1; share > LEAST_SHARE; share /= 2) {
                for (int i = 0; i < ROUNDS_OF_A_SHARE; i++) {
                    double miss = round.applyAsDouble(share);
                    if (miss < toleranceMm) {
                        return;
                    }
                    least = Math.min(least, Double.isNaN(miss) ? least : miss);
                }
            }
        } catch (GeometryException ranAway) {
            throw new DraftException(shell, measure, least, toleranceMm, CONTRADICTION);
        }
        throw new DraftException(shell, measure, least, toleranceMm, CONTRADICTION);
    }

    private static final String CONTRADICTION =
            "its measures contradict each other, the nearest outline still misses by the amount named; measure again";
}
