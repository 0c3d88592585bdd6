package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.records.sitting.Evidence;
import trueseam.records.sitting.KeptSitting;
import trueseam.records.sitting.Sittings;

/** Sittings as rows. */
public final class SittingRows implements Sittings {

    private final Rows rows;

    /**
     * Sittings as rows.
     *
     * @param rows the owner's rows
     */
    public SittingRows(Rows rows) {
        this.rows = rows;
    }

    private record SittingRow(String id, String date) {}

    private record SeenRow(String sitting, KeptSitting.Seen seen) {}

    @Override
    public List<KeptSitting> of(String project) {
        Map<String, List<KeptSitting.Seen>> seen = new LinkedHashMap<>();
        rows.all(
                        "select f.* from finding f join sitting s on s.owner_id = f.owner_id and s.id = f.sitting_id"
                                + " where f.owner_id = :owner and s.project_id = :id order by f.sitting_id, f.place",
                        Bound.id(project),
                        (row, context) -> new SeenRow(row.getString("sitting_id"), seen(row)))
                .forEach(one -> seen.computeIfAbsent(one.sitting(), k -> new ArrayList<>())
                        .add(one.seen()));
        return rows
                .all(
                        "select id, held_on from sitting where owner_id = :owner and project_id = :id order by place",
                        Bound.id(project),
                        (row, context) -> new SittingRow(row.getString("id"), row.getString("held_on")))
                .stream()
                .map(sitting -> new KeptSitting(sitting.date(), seen.getOrDefault(sitting.id(), List.of())))
                .toList();
    }

    @Override
    public void replaceOf(String project, List<KeptSitting> sittings) {
        rows.together(one -> {
            one.put("delete from sitting where owner_id = :owner and project_id = :id", Bound.id(project));
            List<Bound> each = new ArrayList<>();
            List<Bound> findings = new ArrayList<>();
            for (KeptSitting sitting : sittings) {
                String id = Rows.fresh();
                each.add(Bound.id(id)
                        .text("project", project)
                        .whole("place", each.size())
                        .text("date", sitting.date()));
                for (int place = 0; place < sitting.seen().size(); place++) {
                    findings.add(values(id, place, sitting.seen().get(place)));
                }
            }
            one.putAll(
                    "insert into sitting (id, owner_id, project_id, place, held_on)"
                            + " values (:id, :owner, :project, :place, :date)",
                    each);
            one.putAll(
                    "insert into finding (owner_id, sitting_id, place, symptom, cause, alteration, amount, amount_mm,"
                            + " measured_as, side, note) values (:owner, :sitting, :place, :symptom, :cause, :alteration,"
                            + " :amount, :mm, :as, :side, :note)",
                    findings);
            return each.size();
        });
    }

    private static Bound values(String sitting, int place, KeptSitting.Seen seen) {
        return Bound.none()
                .text("sitting", sitting)
                .whole("place", place)
                .text("symptom", seen.symptom())
                .text("cause", seen.cause())
                .text("alteration", seen.alteration())
                .text("amount", seen.amount())
                .number("mm", seen.amountMm())
                .text("as", seen.measuredAs())
                .text("side", seen.side())
                .text("note", seen.note());
    }

    @Override
    public List<Evidence> evidence(String person) {
        return rows.all(
                "select * from standing_evidence where owner_id = :owner and person_id = :id"
                        + " order by alteration, changed_at, project_id, sitting_place, place",
                Bound.id(person),
                (row, context) -> new Evidence(
                        row.getString("project_id"),
                        row.getString("project_name"),
                        row.getString("held_on"),
                        row.getString("alteration"),
                        row.getString("side"),
                        row.getString("amount"),
                        DayRows.number(row, "amount_mm"),
                        row.getString("measured_as")));
    }

    private static KeptSitting.Seen seen(ResultSet row) throws SQLException {
        return new KeptSitting.Seen(
                row.getString("symptom"),
                row.getString("cause"),
                row.getString("alteration"),
                row.getString("amount"),
                DayRows.number(row, "amount_mm"),
                row.getString("measured_as"),
                row.getString("side"),
                row.getString("note"));
    }
}
