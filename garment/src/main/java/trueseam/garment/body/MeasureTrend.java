package trueseam.garment.body;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trueseam.garment.measure.Measure;

/**
 * What one measure of one person was, day after day.
 *
 * @param measure the measure
 * @param side the side; both for a measure that was taken for both together
 * @param points at least one, the earliest first
 */
public record MeasureTrend(Measure measure, Side side, List<Point> points) {

    /**
     * What it was on one day.
     *
     * @param day the day
     * @param mm what the tape read, mm
     */
    public record Point(LocalDate day, double mm) {}

    /** The days are in order. */
    public MeasureTrend {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a trend of no day");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!points.get(i - 1).day().isBefore(points.get(i).day())) {
                throw new IllegalArgumentException("day " + points.get(i).day() + " is not after the one before");
            }
        }
    }

    /**
     * The last day.
     *
     * @return the last point
     */
    public Point last() {
        return points.get(points.size() - 1);
    }

    /**
     * What changed from the day before the last to the last.
     *
     * @return the change, if there are two days
     */
    public Optional<BodyChange> latest() {
        return points.size() < 2 ? Optional.empty() : Optional.of(since(points.get(points.size() - 2)));
    }

    /**
     * What changed from the first day to the last. Small steps, each within measuring error, may add up beyond it.
     *
     * @return the change, if there are two days
     */
    public Optional<BodyChange> overall() {
        return points.size() < 2 ? Optional.empty() : Optional.of(since(points.get(0)));
    }

    private BodyChange since(Point earlier) {
        return new BodyChange(measure, side, earlier.mm(), last().mm());
    }
}
