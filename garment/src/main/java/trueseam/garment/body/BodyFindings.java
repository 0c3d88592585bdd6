package trueseam.garment.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;

/** What a careful eye would question in one person's readings. */
final class BodyFindings {
    /**
     * Front and back crotch length against the total. Source: measuring a large loop is good to about 10 mm in trained
     * hands (ISO 20685, large girths 9 mm, rounded).
     */
    private static final double CROTCH_SUM_MM = 10;

    /**
     * Outside less inside leg length against the body rise. They need not be equal: the tape runs over the hip curve
     * outside, and the rise is taken sitting. An inch apart (common practice) is worth a second look.
     */
    private static final double RISE_SUM_MM = 25.4;

    private BodyFindings() {}

    static List<Finding> of(Body body) {
        List<Finding> findings = new ArrayList<>();
        for (Measure measure : body.measures()) {
            spread(body, measure).ifPresent(findings::add);
            sides(body, measure).ifPresent(findings::add);
        }
        crotch(body).ifPresent(findings::add);
        rise(body).ifPresent(findings::add);
        return List.copyOf(findings);
    }

    private static Optional<Finding> spread(Body body, Measure measure) {
        return body.value(measure)
                .filter(value -> value.spreadMm() > measure.allowableErrorMm())
                .map(value -> Finding.warning(
                        measure.term(),
                        value.readings() + " readings lie " + both(value.spreadMm()) + " apart, more than the "
                                + both(measure.allowableErrorMm()) + " of measuring error; measure once more."));
    }

    private static Optional<Finding> sides(Body body, Measure measure) {
        Optional<BodyValue> left = body.value(measure, Side.LEFT);
        Optional<BodyValue> right = body.value(measure, Side.RIGHT);
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        double more = left.get().mm() - right.get().mm();
        if (Math.abs(more) <= measure.allowableErrorMm()) {
            return Optional.empty();
        }
        return Optional.of(Finding.note(
                measure.term(),
                "The " + (more > 0 ? "left" : "right") + " is " + both(Math.abs(more))
                        + " more than the other side, which is more than measuring error; the sides may need different"
                        + " pieces."));
    }

    private static Optional<Finding> crotch(Body body) {
        return differ(
                body,
                Measure.TOTAL_CROTCH_LENGTH,
                sum(body, Measure.FRONT_CROTCH_LENGTH, 1, Measure.BACK_CROTCH_LENGTH),
                CROTCH_SUM_MM,
                "front and back crotch length together");
    }

    private static Optional<Finding> rise(Body body) {
        return differ(
                body,
                Measure.BODY_RISE,
                sum(body, Measure.OUTSIDE_LEG_LENGTH, -1, Measure.INSIDE_LEG_LENGTH),
                RISE_SUM_MM,
                "outside less inside leg length");
    }

    private static Optional<Double> sum(Body body, Measure first, int sign, Measure second) {
        return body.value(first).flatMap(a -> body.value(second).map(b -> a.mm() + sign * b.mm()));
    }

    private static Optional<Finding> differ(
            Body body, Measure measure, Optional<Double> expectedMm, double allowedMm, String expectation) {
        Optional<BodyValue> value = body.value(measure);
        if (value.isEmpty() || expectedMm.isEmpty()) {
            return Optional.empty();
        }
        double apart = Math.abs(value.get().mm() - expectedMm.get());
        return apart <= allowedMm
                ? Optional.empty()
                : Optional.of(Finding.warning(
                        measure.term(),
                        "It is " + both(value.get().mm()) + ", but " + expectation + " is " + both(expectedMm.get())
                                + "; they should agree within " + both(allowedMm) + ", so measure them again."));
    }

    /** A finding speaks to users of either unit. */
    private static String both(double mm) {
        return LengthFormat.millimetres().show(mm) + " ("
                + LengthFormat.inches(16).show(mm) + ")";
    }
}
