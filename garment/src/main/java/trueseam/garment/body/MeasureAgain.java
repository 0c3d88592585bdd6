package trueseam.garment.body;

import java.time.LocalDate;
import java.util.Optional;
import trueseam.garment.measure.Measure;

/**
 * When it is time to measure somebody again. This is a rule of our own: no published interval was found. A grown body keeps its lengths and
 * changes its girths slowly, and half a year is short against that; whoever still grows, grows (from memory: five to six centimetres of
 * stature a year between four and twelve) by more than a tape may err (ISO 20685, 4 mm of a height) within three months.
 *
 * @param months after so many months a grown person is measured again
 * @param growingMonths after so many months somebody who grows is
 */
public record MeasureAgain(int months, int growingMonths) {

    /** More than this is no rule. */
    public static final int MOST_MONTHS = 60;

    /** Between two days further apart than this anything may have happened. */
    private static final int LATELY_MONTHS = 24;

    /** Both can be kept to. */
    public MeasureAgain {
        if (!(1 <= months && months <= MOST_MONTHS && 1 <= growingMonths && growingMonths <= MOST_MONTHS)) {
            throw new IllegalArgumentException("months " + months + " and " + growingMonths + ", and not 1 to 60");
        }
    }

    /**
     * The rule where nobody says otherwise.
     *
     * @return six months, and three for who grows
     */
    public static MeasureAgain usual() {
        return new MeasureAgain(6, 3);
    }

    /**
     * Whether somebody grows: her stature became more between the last two days by more than the tape may err.
     *
     * @param stature her stature over the days, if it was ever taken
     * @return true if she grows; false too where nothing tells
     */
    public static boolean isGrowing(Optional<MeasureTrend> stature) {
        return stature.filter(trend -> trend.measure() == Measure.STATURE)
                .filter(trend -> trend.points().size() >= 2)
                .filter(trend -> trend.points()
                        .get(trend.points().size() - 2)
                        .day()
                        .plusMonths(LATELY_MONTHS)
                        .isAfter(trend.last().day()))
                .flatMap(MeasureTrend::latest)
                .filter(change -> change.moreMm() > 0 && change.isBeyondMeasuringError())
                .isPresent();
    }

    /**
     * The day from which she is to be measured again.
     *
     * @param last the last day on which she was
     * @param growing whether she grows
     * @return the day
     */
    public LocalDate due(LocalDate last, boolean growing) {
        return last.plusMonths(growing ? Math.min(months, growingMonths) : months);
    }
}
