package trueseam.output.chart;

import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Side;
import trueseam.garment.measure.Measure;
import trueseam.output.words.MeasureWords;

/**
 * One line of the fitting chart.
 *
 * @param need the measure with body, paper, need and decision
 * @param change how the amount is shared, where the measure is altered
 * @param sides both sides of the body, where they differ
 * @param afterMm what the altered flat pattern measures, mm; nothing where only a paper pattern knows
 */
public record ChartLine(Need need, Optional<Change> change, Optional<Sides> sides, OptionalDouble afterMm) {

    /**
     * What the body has on each side.
     *
     * @param leftMm on the left, mm
     * @param rightMm on the right, mm
     */
    public record Sides(double leftMm, double rightMm) {

        /** Sides nearer to each other than the tape can tell are alike, mm: the smallest step of a ruler. */
        private static final double ALIKE_MM = 0.5;

        /**
         * The sides of a body.
         *
         * @param body the body
         * @param measure the measure
         * @return both, or nothing where the measure has no sides or they are alike
         */
        public static Optional<Sides> of(Body body, Measure measure) {
            if (!measure.sidesMayDiffer()) {
                return Optional.empty();
            }
            return body.value(measure, Side.LEFT)
                    .flatMap(left -> body.value(measure, Side.RIGHT).map(right -> new Sides(left.mm(), right.mm())))
                    .filter(sides -> Math.abs(sides.leftMm() - sides.rightMm()) >= ALIKE_MM);
        }
    }

    /** A need up to so many times what the tape may be off is shown with the tape's error beside it. */
    private static final double SMALL = 2;

    /**
     * What the measure is called in the workroom.
     *
     * @return with a capital
     */
    public String label() {
        return MeasureWords.label(need.measure());
    }

    /**
     * Whether the need is small enough to be the tape's.
     *
     * @return true up to twice the allowable measuring error
     */
    public boolean isNearTheTapesError() {
        return Math.abs(need.needMm()) <= SMALL * need.measuringErrorMm();
    }

    /**
     * Whether the body's measure was taken along its own path.
     *
     * @return false for stand-ins, estimates and values of a table: these get a footnote
     */
    public boolean isTaped() {
        return need.body().origin() == Origin.TAPED;
    }

    /**
     * What is done, in a word or two.
     *
     * @return the verdict
     */
    public String verdict() {
        return switch (need.decision().verdict()) {
            case LEAVE -> "leave";
            case ALTER -> "alter";
            case TRY_ON -> "try on";
        };
    }
}
