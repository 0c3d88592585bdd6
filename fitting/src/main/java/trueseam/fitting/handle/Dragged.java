package trueseam.fitting.handle;

import trueseam.fitting.plan.FitResult;

/** What became of a drag. */
public sealed interface Dragged {

    /**
     * By how much the measure was to be altered.
     *
     * @return mm in all
     */
    double amountMm();

    /**
     * The pieces followed; whether every proof holds is in the fit.
     *
     * @param amountMm by how much the measure is altered in all, mm
     * @param fit the whole fit
     */
    record Moved(double amountMm, FitResult fit) implements Dragged {}

    /**
     * The pattern cannot follow so far.
     *
     * @param amountMm by how much the measure was to be altered in all, mm
     * @param farthestMm the largest amount found that way that can be done, mm in all
     * @param why one sentence, of the least amount found that cannot be done
     */
    record Refused(double amountMm, double farthestMm, String why) implements Dragged {}
}
