package trueseam.drafting;

import java.util.Locale;
import trueseam.garment.measure.Measure;

/** A figure cannot be drafted. Nothing is clamped: the figure, or the ease, has to change. */
public final class DraftException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String shell;
    private final Measure measure;
    private final double amountMm;
    private final double limitMm;

    /**
     * Holds the whole case.
     *
     * @param shell which shell was drafted
     * @param measure the measure that does not go with the others
     * @param amountMm what it comes to, mm
     * @param limitMm what it would have to come to, mm
     * @param why what does not go together, and what to do, without the numbers
     */
    DraftException(String shell, Measure measure, double amountMm, double limitMm, String why) {
        super(String.format(
                Locale.ROOT,
                "The %s cannot be drafted: %s (%s: %.1f mm, limit %.1f mm).",
                shell,
                why,
                measure.term(),
                amountMm,
                limitMm));
        this.shell = shell;
        this.measure = measure;
        this.amountMm = amountMm;
        this.limitMm = limitMm;
    }

    /**
     * What was drafted.
     *
     * @return for example {@code bodice}
     */
    public String shell() {
        return shell;
    }

    /**
     * The measure that does not go with the others.
     *
     * @return the measure
     */
    public Measure measure() {
        return measure;
    }

    /**
     * What it comes to.
     *
     * @return mm
     */
    public double amountMm() {
        return amountMm;
    }

    /**
     * What it would have to come to.
     *
     * @return mm
     */
    public double limitMm() {
        return limitMm;
    }
}
