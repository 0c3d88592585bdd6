package trueseam.fitting.compare;

import java.util.OptionalDouble;
import trueseam.garment.body.BodyValue;
import trueseam.garment.measure.Measure;

/**
 * One line of the fitting chart: what the body has, what the paper has, what is lacking, and what is done about it.
 *
 * @param measure the measure
 * @param body the body's value and where it comes from
 * @param tableMm what the chosen size has, mm, where the table has the measure
 * @param flatMm what the tape reads on the flat pattern, mm, where there is one
 * @param easeMm ease that the garment is to have here, mm
 * @param minimumEaseMm the least wearing ease, mm, where one is known
 * @param easeSource where the ease comes from
 * @param method against what it was compared
 * @param needMm how much larger the garment must get, mm
 * @param decision what is done
 */
public record Need(
        Measure measure,
        BodyValue body,
        OptionalDouble tableMm,
        OptionalDouble flatMm,
        double easeMm,
        OptionalDouble minimumEaseMm,
        String easeSource,
        Method method,
        double needMm,
        Decision decision) {

    /**
     * The same line with another decision.
     *
     * @param other the decision
     * @return the line
     */
    public Need with(Decision other) {
        return new Need(measure, body, tableMm, flatMm, easeMm, minimumEaseMm, easeSource, method, needMm, other);
    }

    /**
     * How exactly the body could be measured here; a need not much larger than this may be the tape's.
     *
     * @return allowable error of the measure, mm (ISO 20685 groups)
     */
    public double measuringErrorMm() {
        return measure.allowableErrorMm();
    }

    /**
     * What the flat pattern is to measure after altering.
     *
     * @return mm, where there is a flat pattern
     */
    public OptionalDouble targetMm() {
        return flatMm.isPresent() ? OptionalDouble.of(flatMm.getAsDouble() + decision.amountMm()) : flatMm;
    }
}
