package trueseam.fitting.profile;

import java.util.List;
import java.util.Optional;
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

    static BodyGirth of(Measure measure, BodyValue value, double heightMm, HeightFrom from, Optional<EaseRow> ease) {
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

    /**
     * The lengths of the body that tell how high such a girth lies.
     *
     * @return the measures to take; none where its height follows from its definition, or where no length tells it
     */
    public List<Measure> heightLengths() {
        return switch (measure) {
            case BUST_GIRTH, CHEST_GIRTH -> List.of(Measure.FRONT_WAIST_LENGTH_OVER_BUST, Measure.BUST_POINT_HEIGHT);
            case HIP_GIRTH, TOP_HIP_GIRTH -> List.of(Measure.WAIST_TO_HIP);
            case KNEE_GIRTH, CALF_GIRTH -> List.of(Measure.INSIDE_LEG_LENGTH, Measure.KNEE_HEIGHT);
            case ELBOW_GIRTH -> List.of(Measure.UPPER_ARM_LENGTH);
            case WRIST_GIRTH -> List.of(Measure.ARM_LENGTH);
            default -> List.of();
        };
    }
}
