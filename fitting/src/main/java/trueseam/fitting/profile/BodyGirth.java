package trueseam.fitting.profile;

import java.util.OptionalDouble;
import trueseam.garment.body.BodyValue;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.measure.Measure;

/**
 * A girth of the body at its height.
 *
 * @param measure which girth
 * @param value how much, and where it comes from
 * @param heightMm where, mm above the zero of the part of the body
 * @param from how the height is known
 * @param leastEaseMm the least ease that a garment needs here, mm, where the ease table has one
 * @param easeSource who says so; empty where there is none
 */
public record BodyGirth(
        Measure measure,
        BodyValue value,
        double heightMm,
        HeightFrom from,
        OptionalDouble leastEaseMm,
        String easeSource) {

    static BodyGirth of(
            Measure measure, BodyValue value, double heightMm, HeightFrom from, java.util.Optional<EaseRow> ease) {
        return new BodyGirth(
                measure,
                value,
                heightMm,
                from,
                ease.map(row -> OptionalDouble.of(row.minimumMm())).orElse(OptionalDouble.empty()),
                ease.map(EaseRow::source).orElse(""));
    }

    /**
     * The girth.
     *
     * @return mm
     */
    public double mm() {
        return value.mm();
    }
}
