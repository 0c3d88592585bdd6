package trueseam.garment.body;

import trueseam.garment.measure.Measure;

/** A measure is needed that this body does not have. */
public final class MissingMeasureException extends RuntimeException {
    private final String body;
    private final Measure measure;

    MissingMeasureException(String body, Measure measure) {
        super("\"" + body + "\" has no " + measure.term() + "; measure it: " + measure.tapePath());
        this.body = body;
        this.measure = measure;
    }

    /**
     * Whose measure is missing.
     *
     * @return the body's label
     */
    public String body() {
        return body;
    }

    /**
     * What is missing.
     *
     * @return the measure
     */
    public Measure measure() {
        return measure;
    }
}
