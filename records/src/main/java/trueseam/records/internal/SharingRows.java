package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.group.SharedProject;
import trueseam.records.group.Sharing;

/** What is shared, as rows: the one way from a teacher to rows of her students. */
public final class SharingRows implements Sharing {

    /** Only from a class of this teacher, only of people who are shared, and only a line of the list; the rest is asked of its owner. */
    private static final String SHARED =
            "select distinct project.id, project.owner_id, account.name as student, project.name, person.label,"
                    + " project.changed_at from class_member"
                    + " join account on account.id = class_member.account_id and account.role = 'student'"
                    + " join person on person.owner_id = account.id and person.shared = 1"
                    + " join project on project.owner_id = person.owner_id and project.person_id = person.id"
                    + " where class_member.owner_id = :owner";

    private final Rows rows;

    /**
     * What is shared, as rows.
     *
     * @param rows the rows of the teacher, or of who shares
     */
    public SharingRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public List<SharedProject> list() {
        return rows.all(
                SHARED + " order by student, project.changed_at desc, project.id",
                Bound.none(),
                (row, context) -> shared(row));
    }

    @Override
    public Optional<SharedProject> find(String project) {
        return rows.first(SHARED + " and project.id = :id", Bound.id(project), (row, context) -> shared(row));
    }

    @Override
    public List<String> teachers() {
        return rows.all(
                "select distinct account.name from class_member"
                        + " join account on account.id = class_member.owner_id and account.closed = 0"
                        + " where class_member.account_id = :owner order by account.name",
                Bound.none(),
                (row, context) -> row.getString("name"));
    }

    private static SharedProject shared(ResultSet row) throws SQLException {
        return new SharedProject(
                row.getString("id"),
                row.getLong("owner_id"),
                row.getString("student"),
                row.getString("name"),
                row.getString("label"),
                row.getLong("changed_at"));
    }
}
