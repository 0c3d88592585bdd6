package trueseam.garment.body;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.garment.measure.Measure;

/**
 * One person's measures.
 *
 * <p>Laws, for a measure that has readings:
 *
 * <ol>
 *   <li>readings of this person ({@link Origin#TAPED}, then stand-ins, then estimates) count before a table's;
 *   <li>of those, only the readings of the latest date count, and their mean is the value; undated ones count as older
 *       than any date;
 *   <li>the value of a side is that of its own readings, or of the readings for both when these are newer or it has
 *       none;
 *   <li>the value of a sided measure as a whole is the mean of its left and right values.
 * </ol>
 *
 * @param label what the dressmaker calls this person: one line, never blank
 * @param readings every reading, in the order taken
 */
public record Body(String label, List<Reading> readings) {

    /**
     * Takes the blanks off the label and keeps a copy of the readings.
     *
     * @param label as of the record
     * @param readings as of the record
     * @throws IllegalArgumentException when the label is blank or has more than one line
     */
    public Body {
        label = label.strip();
        if (label.isEmpty() || label.lines().count() > 1) {
            throw new IllegalArgumentException("a body needs a label of one line");
        }
        readings = List.copyOf(readings);
    }

    /**
     * A body with no readings yet.
     *
     * @param label what the dressmaker calls this person
     * @return the body
     */
    public static Body named(String label) {
        return new Body(label, List.of());
    }

    /**
     * This body with one more reading.
     *
     * @param reading the reading
     * @return the new body
     */
    public Body with(Reading reading) {
        return withAll(List.of(reading));
    }

    /**
     * This body with more readings.
     *
     * @param more the readings, in the order taken
     * @return the new body
     */
    public Body withAll(List<Reading> more) {
        List<Reading> all = new ArrayList<>(readings);
        all.addAll(more);
        return new Body(label, all);
    }

    /**
     * This body without any reading of a measure.
     *
     * @param measure the measure to forget
     * @return the new body
     */
    public Body without(Measure measure) {
        return new Body(
                label,
                readings.stream()
                        .filter(reading -> reading.measure() != measure)
                        .toList());
    }

    /**
     * The measures that have at least one reading.
     *
     * @return the measures, in the order of {@link Measure}
     */
    public Set<Measure> measures() {
        Set<Measure> measures = EnumSet.noneOf(Measure.class);
        readings.forEach(reading -> measures.add(reading.measure()));
        return measures;
    }

    /**
     * The value of a measure of the whole body.
     *
     * @param measure the measure
     * @return the value, or empty when it was never read
     */
    public Optional<BodyValue> value(Measure measure) {
        return value(measure, Side.BOTH);
    }

    /**
     * The value of a measure on one side.
     *
     * @param measure the measure
     * @param side the side, or {@link Side#BOTH} for the mean of both
     * @return the value, or empty when neither this side nor the whole was ever read
     */
    public Optional<BodyValue> value(Measure measure, Side side) {
        return ReadingsOfMeasure.of(this, measure).value(side);
    }

    /**
     * The value of a measure that cannot be done without.
     *
     * @param measure the measure
     * @return mm
     * @throws MissingMeasureException when it was never read
     */
    public double mm(Measure measure) {
        return value(measure)
                .orElseThrow(() -> new MissingMeasureException(label, measure))
                .mm();
    }

    /**
     * What is doubtful in these readings among themselves: readings too far apart, sides that differ, sums that do not
     * agree.
     *
     * @return the findings, measure by measure; the place of each is the measure's term
     */
    public List<Finding> findings() {
        return BodyFindings.of(this);
    }
}
