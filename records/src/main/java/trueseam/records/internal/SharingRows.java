package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.group.JoinedClass;
import trueseam.records.group.Share;
import trueseam.records.group.SharedProject;
import trueseam.records.group.Sharing;

/** What is shared, as rows: the one way from a teacher to rows of her students. */
public final class SharingRows implements Sharing {

    /**
     * Only what is shared with a class of this teacher, and only a line of the list; the rest is asked of its owner. A share hangs on the
     * student's place in the class, so that it ends with that.
     */
    private static final String SHARED =
            "select distinct project.id, project.owner_id, account.name as student, project.name,"
                    + " coalesce(person.label, '') as label, project.changed_at from taught_class"
                    + " join share on share.class_id = taught_class.id"
                    + " join account on account.id = share.owner_id and account.role = 'student'"
                    + " join project on project.owner_id = share.owner_id"
                    + " and (project.id = share.project_id or project.person_id = share.person_id)"
                    + " left join person on person.owner_id = project.owner_id and person.id = project.person_id"
                    + " where taught_class.owner_id = :owner";

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
    public List<JoinedClass> classes() {
        return rows.all(
                "select taught_class.id, taught_class.name, account.name as teacher from class_member"
                        + " join taught_class on taught_class.id = class_member.class_id"
                        + " join account on account.id = taught_class.owner_id and account.closed = 0"
                        + " where class_member.account_id = :owner order by taught_class.name, taught_class.id",
                Bound.none(),
                (row, context) ->
                        new JoinedClass(row.getString("id"), row.getString("name"), row.getString("teacher")));
    }

    @Override
    public List<Share> shares() {
        return rows.all(
                "select class_id, person_id, project_id from share where owner_id = :owner",
                Bound.none(),
                (row, context) -> new Share(
                        row.getString("class_id"),
                        Optional.ofNullable(row.getString("person_id")),
                        Optional.ofNullable(row.getString("project_id"))));
    }

    @Override
    public boolean person(String taughtClass, String person, boolean shared) {
        return set("person", taughtClass, person, shared);
    }

    @Override
    public boolean project(String taughtClass, String project, boolean shared) {
        return set("project", taughtClass, project, shared);
    }

    /** What is a table's name here stands in this class alone and is never typed. */
    private boolean set(String what, String taughtClass, String id, boolean shared) {
        Bound values = Bound.id(id).text("class", taughtClass);
        if (!shared) {
            rows.put(
                    "delete from share where owner_id = :owner and class_id = :class and " + what + "_id = :id",
                    values);
            return false;
        }
        rows.put(
                "insert into share (id, owner_id, class_id, " + what + "_id)"
                        + " select :share, class_member.account_id, class_member.class_id, " + what + ".id"
                        + " from class_member join " + what + " on " + what + ".owner_id = class_member.account_id"
                        + " where class_member.account_id = :owner and class_member.class_id = :class"
                        + " and " + what + ".id = :id on conflict do nothing",
                values.text("share", Rows.fresh()));
        return rows.first(
                        "select id from share where owner_id = :owner and class_id = :class and " + what + "_id = :id",
                        Bound.id(id).text("class", taughtClass),
                        (row, context) -> row.getString("id"))
                .isPresent();
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
