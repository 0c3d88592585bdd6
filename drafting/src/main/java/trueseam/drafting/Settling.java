package trueseam.drafting;

import java.util.function.DoubleSupplier;
import trueseam.garment.measure.Measure;

/**
 * Corrects a draft until it measures right: each round lays the draft out, measures it and takes the misses off the
 * unknowns. The unknowns hardly disturb each other, so every round leaves a small part of the misses.
 */
final class Settling {

    /** Far below the 0.1 mm that is promised, so that what is built on it (darts, seams) agrees too. */
    static final double SETTLED_MM = 1e-8;

    private static final int ROUNDS = 200;

    private Settling() {}

    /**
     * Repeats a round until nothing is missed any more.
     *
     * @param round lays out, measures, corrects; gives the largest miss, mm
     * @param shell what is drafted
     * @param measure what is blamed when it does not settle
     */
    static void of(DoubleSupplier round, String shell, Measure measure) {
        within(SETTLED_MM, round, shell, measure);
    }

    /**
     * Repeats a round until what is missed does not matter for what is decided on it.
     *
     * @param toleranceMm largest miss that may be left
     * @param round lays out, measures, corrects; gives the largest miss, mm
     * @param shell what is drafted
     * @param measure what is blamed when it does not settle
     */
    static void within(double toleranceMm, DoubleSupplier round, String shell, Measure measure) {
        double miss = Double.NaN;
        for (int i = 0; i < ROUNDS; i++) {
            miss = round.getAsDouble();
            if (miss < toleranceMm) {
                return;
            }
        }
        throw new DraftException(
                shell, measure, miss, toleranceMm, "its measures contradict each other, no outline meets all of them");
    }
}
