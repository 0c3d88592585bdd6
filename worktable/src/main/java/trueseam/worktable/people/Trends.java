package trueseam.worktable.people;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import trueseam.garment.body.MeasureTrend;
import trueseam.garment.body.Side;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.TapeReading;

/** The days of a person as trends; days without a date, and what cannot be read, have no place on a line of time. */
final class Trends {

    private Trends() {}

    private record Key(Measure measure, Side side) {}

    static List<MeasureTrend> of(List<MeasuringDay> days) {
        Map<Key, TreeMap<LocalDate, List<Double>>> read = new HashMap<>();
        for (MeasuringDay day : days) {
            date(day).ifPresent(date -> day.readings().forEach(reading -> key(reading)
                    .filter(key -> reading.mm().isPresent())
                    .ifPresent(key -> read.computeIfAbsent(key, none -> new TreeMap<>())
                            .computeIfAbsent(date, none -> new ArrayList<>())
                            .add(reading.mm().getAsDouble()))));
        }
        return read.entrySet().stream()
                .map(entry -> trend(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(MeasureTrend::measure).thenComparing(MeasureTrend::side))
                .toList();
    }

    /** Several readings of one day count by their mean, as for a body. */
    private static MeasureTrend trend(Key key, SortedMap<LocalDate, List<Double>> byDay) {
        List<MeasureTrend.Point> points = new ArrayList<>();
        byDay.forEach((day, mm) -> points.add(new MeasureTrend.Point(
                day, mm.stream().mapToDouble(Double::doubleValue).average().orElseThrow())));
        return new MeasureTrend(key.measure(), key.side(), points);
    }

    static Optional<MeasureTrend> stature(List<MeasureTrend> trends) {
        return trends.stream()
                .filter(trend -> trend.measure() == Measure.STATURE)
                .findFirst();
    }

    /** The last day with a date. */
    static Optional<LocalDate> last(List<MeasuringDay> days) {
        return days.stream().map(Trends::date).flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    private static Optional<LocalDate> date(MeasuringDay day) {
        try {
            return Optional.of(LocalDate.parse(day.date()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static Optional<Key> key(TapeReading reading) {
        try {
            Side side =
                    switch (reading.side()) {
                        case "left" -> Side.LEFT;
                        case "right" -> Side.RIGHT;
                        default -> Side.BOTH;
                    };
            return Optional.of(new Key(Measure.named(reading.measure()), side));
        } catch (UnknownMeasureException e) {
            return Optional.empty();
        }
    }
}
