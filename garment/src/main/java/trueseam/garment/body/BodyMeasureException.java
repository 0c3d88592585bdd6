package trueseam.garment.body;

import trueseam.garment.measure.Measure;

/** A value cannot be a measure of a body. */
public final class BodyMeasureException extends RuntimeException {
    private final Measure measure;
    private final double mm;
    private final String reason;

    BodyMeasureException(Measure measure, double mm, String reason) {
        super(measure.term() + " cannot be " + mm + " mm: " + reason + ".");
        this.measure = measure;
        this.mm = mm;
        this.reason = reason;
    }

    /**
     * The measure.
     *
     * @return the measure
     */
    public Measure measure() {
        return measure;
    }

    /**
     * The value refused.
     *
     * @return mm
     */
    public double mm() {
        return mm;
    }

    /**
     * Why it is refused.
     *
     * @return the reason, without a full stop
     */
    public String reason() {
        return reason;
    }
}
