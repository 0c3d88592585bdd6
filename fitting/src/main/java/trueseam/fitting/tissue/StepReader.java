package trueseam.fitting.tissue;

/**
 * Does one thing with every kind of step: carries it out, puts it into words, draws it.
 *
 * @param <R> what comes of a step
 */
public interface StepReader<R> {

    /**
     * For a mark.
     *
     * @param step the step
     * @return what comes of it
     */
    R mark(Step.Mark step);

    /**
     * For a pin.
     *
     * @param step the step
     * @return what comes of it
     */
    R pin(Step.Pin step);

    /**
     * For a pivot.
     *
     * @param step the step
     * @return what comes of it
     */
    R pivot(Step.Pivot step);

    /**
     * For a slide.
     *
     * @param step the step
     * @return what comes of it
     */
    R slide(Step.Slide step);

    /**
     * For laying the pattern back.
     *
     * @param step the step
     * @return what comes of it
     */
    R layBack(Step.LayBack step);

    /**
     * For a tracing.
     *
     * @param step the step
     * @return what comes of it
     */
    R trace(Step.Trace step);

    /**
     * For copying the marks inside.
     *
     * @param step the step
     * @return what comes of it
     */
    R transferBelow(Step.TransferBelow step);

    /**
     * For a joined line.
     *
     * @param step the step
     * @return what comes of it
     */
    R join(Step.Join step);

    /**
     * For cutting a part loose.
     *
     * @param step the step
     * @return what comes of it
     */
    R cut(Step.Cut step);

    /**
     * For opening or lapping a cut.
     *
     * @param step the step
     * @return what comes of it
     */
    R spread(Step.Spread step);

    /**
     * For marking something inside anew.
     *
     * @param step the step
     * @return what comes of it
     */
    R remark(Step.Remark step);

    /**
     * For making a dart of an opening.
     *
     * @param step the step
     * @return what comes of it
     */
    R newDart(Step.NewDart step);

    /**
     * For ruling an edge straight.
     *
     * @param step the step
     * @return what comes of it
     */
    R straighten(Step.Straighten step);

    /**
     * For taking a piece off the fold.
     *
     * @param step the step
     * @return what comes of it
     */
    R unfold(Step.Unfold step);

    /**
     * For tracing over from another piece.
     *
     * @param step the step
     * @return what comes of it
     */
    R traceOver(Step.TraceOver step);
}
