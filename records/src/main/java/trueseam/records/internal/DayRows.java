package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import trueseam.records.person.Days;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.TapeReading;
import trueseam.records.person.TrendPoint;

/** Measuring days as rows. */
public final class DayRows implements Days {

    private final Rows rows;

    /**
     * Days as rows.
     *
     * @param rows the owner's rows
     */
    public DayRows(Rows rows) {
        this.rows = rows;
    }

    private record DayRow(String id, String date, String note) {}

    private record ReadingRow(String day, TapeReading reading) {}

    @Override
    public List<MeasuringDay> of(String personId) {
        List<DayRow> days = rows.all(
                "select d.id, d.measured_on, d.note from measuring_day d"
                        + " left join project p on p.owner_id = d.owner_id and p.id = d.project_id"
                        + " where d.owner_id = :owner and d.person_id = :id"
                        + " order by coalesce(p.changed_at, 0), d.project_id, d.place",
                Bound.id(personId),
                (row, context) -> dayRow(row));
        return together(filled(days, personId));
    }

    /** One day for each date. Where two rows of a date have a reading of one place, that of the later changed project counts. */
    private static List<MeasuringDay> together(List<MeasuringDay> inOrderOfChange) {
        Map<String, MeasuringDay> byDate =
                new TreeMap<>(); // ISO dates are in order as text, and the empty one comes first
        for (MeasuringDay day : inOrderOfChange) {
            byDate.merge(day.date(), day, DayRows::over);
        }
        return List.copyOf(byDate.values());
    }

    private static MeasuringDay over(MeasuringDay earlier, MeasuringDay later) {
        Map<String, List<TapeReading>> byPlace = new LinkedHashMap<>();
        earlier.readings().forEach(r -> byPlace.computeIfAbsent(r.place(), k -> new ArrayList<>())
                .add(r));
        Map<String, List<TapeReading>> laterByPlace = new LinkedHashMap<>();
        later.readings().forEach(r -> laterByPlace
                .computeIfAbsent(r.place(), k -> new ArrayList<>())
                .add(r));
        byPlace.putAll(laterByPlace);
        return new MeasuringDay(
                earlier.date(),
                later.note().isEmpty() ? earlier.note() : later.note(),
                byPlace.values().stream().flatMap(List::stream).toList());
    }

    private List<MeasuringDay> filled(List<DayRow> days, String personId) {
        Map<String, List<TapeReading>> readings = new LinkedHashMap<>();
        rows.all(
                        "select r.* from reading r"
                                + " join measuring_day d on d.owner_id = r.owner_id and d.id = r.day_id"
                                + " where r.owner_id = :owner and d.person_id = :id order by r.day_id, r.place",
                        Bound.id(personId),
                        (row, context) -> new ReadingRow(row.getString("day_id"), reading(row)))
                .forEach(r -> readings.computeIfAbsent(r.day(), k -> new ArrayList<>())
                        .add(r.reading()));
        return days.stream()
                .map(day -> new MeasuringDay(day.date(), day.note(), readings.getOrDefault(day.id(), List.of())))
                .toList();
    }

    @Override
    public List<MeasuringDay> own(String personId) {
        return filled(
                rows.all(
                        "select id, measured_on, note from measuring_day"
                                + " where owner_id = :owner and person_id = :id and project_id is null order by place",
                        Bound.id(personId),
                        (row, context) -> dayRow(row)),
                personId);
    }

    @Override
    public void replaceOf(String projectId, String personId, List<MeasuringDay> days) {
        rows.together(one -> {
            one.put(
                    "delete from measuring_day where owner_id = :owner and project_id = :project",
                    Bound.none().text("project", projectId));
            return new DayRows(one).add(Optional.of(projectId), personId, days);
        });
    }

    @Override
    public void replaceOwn(String personId, List<MeasuringDay> days) {
        rows.together(one -> {
            one.put(
                    "delete from measuring_day where owner_id = :owner and person_id = :id and project_id is null",
                    Bound.id(personId));
            return new DayRows(one).add(Optional.empty(), personId, days);
        });
    }

    private int add(Optional<String> projectId, String personId, List<MeasuringDay> days) {
        List<Bound> each = new ArrayList<>();
        List<Bound> readings = new ArrayList<>();
        for (MeasuringDay day : days) {
            String id = Rows.fresh();
            each.add(Bound.id(id)
                    .text("person", personId)
                    .text("project", projectId)
                    .whole("place", each.size())
                    .text("date", day.date())
                    .text("note", day.note()));
            for (int place = 0; place < day.readings().size(); place++) {
                readings.add(values(id, place, day.readings().get(place)));
            }
        }
        rows.putAll(
                "insert into measuring_day (id, owner_id, person_id, project_id, place, measured_on, note)"
                        + " values (:id, :owner, :person, :project, :place, :date, :note)",
                each);
        rows.putAll(
                "insert into reading (owner_id, day_id, place, measure, side, typed, unit, origin, note, mm)"
                        + " values (:owner, :day, :place, :measure, :side, :typed, :unit, :origin, :note, :mm)",
                readings);
        return days.size();
    }

    private static Bound values(String day, int place, TapeReading reading) {
        return Bound.none()
                .text("day", day)
                .whole("place", place)
                .text("measure", reading.measure())
                .text("side", reading.side())
                .text("typed", reading.typed())
                .text("unit", reading.unit())
                .text("origin", reading.origin())
                .text("note", reading.note())
                .number("mm", reading.mm());
    }

    @Override
    public List<TrendPoint> trend(String personId, String measure) {
        List<TrendPoint> points = new ArrayList<>();
        for (MeasuringDay day : of(personId)) {
            for (TapeReading reading : day.readings()) {
                if (reading.measure().equals(measure) && reading.mm().isPresent()) {
                    points.add(new TrendPoint(
                            day.date(), reading.side(), reading.mm().getAsDouble(), reading.origin()));
                }
            }
        }
        return points;
    }

    private static DayRow dayRow(ResultSet row) throws SQLException {
        return new DayRow(row.getString("id"), row.getString("measured_on"), row.getString("note"));
    }

    private static TapeReading reading(ResultSet row) throws SQLException {
        return new TapeReading(
                row.getString("measure"),
                row.getString("side"),
                row.getString("typed"),
                row.getString("unit"),
                row.getString("origin"),
                row.getString("note"),
                number(row, "mm"));
    }

    static OptionalDouble number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
