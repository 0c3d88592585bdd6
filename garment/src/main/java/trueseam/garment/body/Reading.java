package trueseam.garment.body;

import java.time.LocalDate;
import java.util.Optional;
import trueseam.garment.measure.Measure;

/**
 * One reading of one measure.
 *
 * @param measure what was measured
 * @param side the side it was taken on; {@link Side#BOTH} for a measure that has no sides
 * @param mm millimetres, positive; a shoulder slope may be zero
 * @param date when it was taken, if known
 * @param origin where it comes from
 * @param note what a reader must know about it, or empty
 */
public record Reading(Measure measure, Side side, double mm, Optional<LocalDate> date, Origin origin, String note) {

    /**
     * Checks the value and the side.
     *
     * @param measure as of the record
     * @param side as of the record
     * @param mm as of the record
     * @param date as of the record
     * @param origin as of the record
     * @param note as of the record
     * @throws BodyMeasureException when the value is not a positive length, or a side is given for a measure that has
     *     none
     */
    public Reading {
        boolean mayBeZero = measure == Measure.SHOULDER_SLOPE;
        if (!Double.isFinite(mm) || mm < 0 || (mm == 0 && !mayBeZero)) {
            throw new BodyMeasureException(measure, mm, "a length above zero was expected");
        }
        if (side != Side.BOTH && !measure.sidesMayDiffer()) {
            throw new BodyMeasureException(measure, mm, "this measure has no left and right");
        }
        mm = mm + 0.0;
    }

    /**
     * A taped reading of the whole measure, undated.
     *
     * @param measure what was measured
     * @param mm millimetres
     * @return the reading
     */
    public static Reading taped(Measure measure, double mm) {
        return new Reading(measure, Side.BOTH, mm, Optional.empty(), Origin.TAPED, "");
    }

    /**
     * A taped reading of one side, undated.
     *
     * @param measure what was measured
     * @param side the side
     * @param mm millimetres
     * @return the reading
     */
    public static Reading taped(Measure measure, Side side, double mm) {
        return new Reading(measure, side, mm, Optional.empty(), Origin.TAPED, "");
    }

    /**
     * A value that was not taped along the measure's own path.
     *
     * @param measure what it is for
     * @param mm millimetres
     * @param origin where it comes from
     * @param note what a reader must know about it
     * @return the reading
     */
    public static Reading of(Measure measure, double mm, Origin origin, String note) {
        return new Reading(measure, Side.BOTH, mm, Optional.empty(), origin, note);
    }

    /**
     * The same reading on a date.
     *
     * @param day when it was taken
     * @return the dated reading
     */
    public Reading on(LocalDate day) {
        return new Reading(measure, side, mm, Optional.of(day), origin, note);
    }
}
