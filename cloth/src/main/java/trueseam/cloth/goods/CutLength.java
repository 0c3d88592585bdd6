package trueseam.cloth.goods;

/** In what steps shops cut cloth. */
public enum CutLength {
    /** An eighth of a yard (trade.md section 9, [THR151]). */
    EIGHTH_YARD(914.4 / 8),
    /** Five centimetres (common practice). */
    FIVE_CM(50);

    private final double stepMm;

    CutLength(double stepMm) {
        this.stepMm = stepMm;
    }

    /**
     * The step.
     *
     * @return mm
     */
    public double stepMm() {
        return stepMm;
    }

    /**
     * The next length that is cut.
     *
     * @param neededMm what is needed, mm
     * @return the least whole number of steps that is no shorter, a hundredth of a millimetre let go
     */
    public double roundUpMm(double neededMm) {
        return stepMm * Math.ceil((neededMm - 0.01) / stepMm);
    }
}
