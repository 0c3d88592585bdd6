package trueseam.worktable.people;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.garment.body.BodyChange;
import trueseam.garment.body.MeasureTrend;
import trueseam.garment.body.Side;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.MeasureWords;

/**
 * One measure over the days as a small picture: the line of what was read, and the band that the tape may err by.
 *
 * @param label what it is called, with its side
 * @param now what it was last
 * @param band the outline of the band, for a polygon
 * @param line the line, for a polyline
 * @param dots where the days are
 * @param said what happened, with the measuring error
 * @param beyond whether the change is larger than that
 */
public record TrendPicture(
        String label, String now, String band, String line, List<Dot> dots, String said, boolean beyond) {

    private static final double WIDTH = 220;
    private static final double HEIGHT = 56;
    private static final double EDGE = 6;

    /**
     * A day.
     *
     * @param x across
     * @param y down
     */
    public record Dot(String x, String y) {}

    /** Does not change. */
    public TrendPicture {
        dots = List.copyOf(dots);
    }

    static TrendPicture of(MeasureTrend trend, LengthFormat show) {
        double error = trend.measure().allowableErrorMm();
        double least = trend.points().stream()
                        .mapToDouble(MeasureTrend.Point::mm)
                        .min()
                        .orElseThrow()
                - error;
        double most = trend.points().stream()
                        .mapToDouble(MeasureTrend.Point::mm)
                        .max()
                        .orElseThrow()
                + error;
        var first = trend.points().get(0).day();
        long span = Math.max(1, ChronoUnit.DAYS.between(first, trend.last().day()));
        List<Dot> dots = new ArrayList<>();
        StringBuilder above = new StringBuilder();
        StringBuilder below = new StringBuilder();
        for (MeasureTrend.Point point : trend.points()) {
            String x = number(EDGE + (WIDTH - 2 * EDGE) * ChronoUnit.DAYS.between(first, point.day()) / span);
            dots.add(new Dot(x, y(point.mm(), least, most)));
            above.append(x)
                    .append(',')
                    .append(y(point.mm() + error, least, most))
                    .append(' ');
            below.insert(0, x + "," + y(point.mm() - error, least, most) + " ");
        }
        String line = String.join(
                " ", dots.stream().map(dot -> dot.x() + "," + dot.y()).toList());
        return new TrendPicture(
                MeasureWords.label(trend.measure()) + (trend.side() == Side.BOTH ? "" : ", " + side(trend.side())),
                show.show(trend.last().mm()),
                above.append(below).toString().strip(),
                line,
                dots,
                said(trend, show),
                trend.overall().filter(BodyChange::isBeyondMeasuringError).isPresent());
    }

    private static String side(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static String said(MeasureTrend trend, LengthFormat show) {
        String error = "the tape may err by " + show.show(trend.measure().allowableErrorMm());
        return trend.overall()
                .map(change -> change.isBeyondMeasuringError()
                        ? "Changed by " + show.showSigned(change.moreMm()) + " since "
                                + trend.points().get(0).day() + "; " + error + "."
                        : "No change that the tape can tell since "
                                + trend.points().get(0).day() + "; " + error + ".")
                .orElse("Taken once, on " + trend.last().day() + "; " + error + ".");
    }

    private static String y(double mm, double least, double most) {
        return number(EDGE + (HEIGHT - 2 * EDGE) * (most - mm) / Math.max(1, most - least));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
