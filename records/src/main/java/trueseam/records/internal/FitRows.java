package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.project.Fits;
import trueseam.records.project.KeptFit;
import trueseam.records.project.KeptPrint;

/** Fits and prints as rows. */
public final class FitRows implements Fits {

    private final Rows rows;

    /**
     * Fits as rows.
     *
     * @param rows the owner's rows
     */
    public FitRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public KeptFit keep(KeptFit fit) {
        return rows.together(one -> {
            Optional<KeptFit> same = one.first(
                    "select * from fit where owner_id = :owner and project_id = :project and project_version = :version"
                            + " and report = :report",
                    values(fit),
                    (row, context) -> fit(row));
            if (same.isPresent()) {
                return same.get();
            }
            String id = Rows.fresh();
            long now = one.now();
            one.put(
                    "insert into fit (id, owner_id, project_id, project_version, made_at, proved, report, altered)"
                            + " values (:id, :owner, :project, :version, :now, :proved, :report, :altered)",
                    values(fit)
                            .text("id", id)
                            .flag("proved", fit.proved())
                            .text("altered", fit.altered())
                            .whole("now", now));
            return new KeptFit(id, fit.project(), fit.projectVersion(), fit.proved(), fit.report(), fit.altered(), now);
        });
    }

    private static Bound values(KeptFit fit) {
        return Bound.none()
                .text("project", fit.project())
                .whole("version", fit.projectVersion())
                .text("report", fit.report());
    }

    @Override
    public List<KeptFit> of(String project) {
        return rows.all(
                "select * from fit where owner_id = :owner and project_id = :id order by made_at desc, id",
                Bound.id(project),
                (row, context) -> fit(row));
    }

    @Override
    public KeptPrint printed(KeptPrint print) {
        String id = Rows.fresh();
        long now = rows.now();
        rows.put(
                "insert into print (id, owner_id, project_id, fit_id, kind, choices, made_at)"
                        + " values (:id, :owner, :project, :fit, :kind, :choices, :now)",
                Bound.id(id)
                        .text("project", print.project())
                        .text("fit", print.fit())
                        .text("kind", print.kind())
                        .text("choices", print.choices())
                        .whole("now", now));
        return new KeptPrint(id, print.project(), print.fit(), print.kind(), print.choices(), now);
    }

    @Override
    public List<KeptPrint> prints(String project) {
        return rows.all(
                "select * from print where owner_id = :owner and project_id = :id order by made_at desc, id",
                Bound.id(project),
                (row, context) -> new KeptPrint(
                        row.getString("id"),
                        row.getString("project_id"),
                        row.getString("fit_id"),
                        row.getString("kind"),
                        row.getString("choices"),
                        row.getLong("made_at")));
    }

    private static KeptFit fit(ResultSet row) throws SQLException {
        return new KeptFit(
                row.getString("id"),
                row.getString("project_id"),
                row.getLong("project_version"),
                row.getInt("proved") == 1,
                row.getString("report"),
                Optional.ofNullable(row.getString("altered")),
                row.getLong("made_at"));
    }
}
