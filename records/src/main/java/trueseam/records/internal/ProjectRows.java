package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;
import trueseam.records.project.Projects;
import trueseam.records.project.Sought;

/** Projects as rows. */
public final class ProjectRows implements Projects {

    private static final String LINES =
            "select p.*, coalesce(h.label, '') as person_label, coalesce(t.garment, '') as garment from project p"
                    + " left join person h on h.owner_id = p.owner_id and h.id = p.person_id"
                    + " left join pattern t on t.owner_id = p.owner_id and t.id = p.pattern_id"
                    + " where p.owner_id = :owner";

    private final Rows rows;

    /**
     * Projects as rows.
     *
     * @param rows the owner's rows
     */
    public ProjectRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public List<KeptProject> list(Sought sought) {
        Bound values = Bound.none().part("text", sought.text());
        sought.person().ifPresent(person -> values.text("person", person));
        sought.pattern().ifPresent(pattern -> values.text("pattern", pattern));
        return rows.all(
                LINES + " and (p.sought like :text escape '!' or coalesce(h.sought, '') like :text escape '!'"
                        + " or coalesce(t.sought, '') like :text escape '!')"
                        + (sought.person().isPresent() ? " and p.person_id = :person" : "")
                        + (sought.pattern().isPresent() ? " and p.pattern_id = :pattern" : "")
                        + (sought.archivedToo() ? "" : " and p.archived = 0")
                        + " order by p.changed_at desc, p.id",
                values,
                (row, context) -> project(row));
    }

    @Override
    public Optional<KeptProject> find(String id) {
        return rows.first(LINES + " and p.id = :id", Bound.id(id), (row, context) -> project(row));
    }

    @Override
    public List<ProjectState> states(String id) {
        return rows.all(
                "select number, label, field, content from project_state where owner_id = :owner and project_id = :id"
                        + " order by number",
                Bound.id(id),
                (row, context) -> new ProjectState(
                        row.getLong("number"),
                        row.getString("label"),
                        row.getString("field"),
                        row.getString("content")));
    }

    @Override
    public void begin(ProjectChange project) {
        rows.together(one -> {
            one.put(
                    "insert into project (id, owner_id, name, person_id, pattern_id, size, state_number, archived, sought,"
                            + " created_at, changed_at, version) values (:id, :owner, :name, :person, :pattern, :size,"
                            + " :state, 0, :sought, :now, :now, :to)",
                    values(project));
            return addStates(one, project);
        });
    }

    @Override
    public void change(ProjectChange change) {
        rows.together(one -> {
            one.putOne(
                    "project",
                    "update project set name = :name, person_id = :person, pattern_id = :pattern, size = :size,"
                            + " state_number = :state, sought = :sought, changed_at = :now, version = :to"
                            + " where owner_id = :owner and id = :id and version = :from",
                    values(change).whole("from", change.from()));
            one.putAll(
                    "delete from project_state where owner_id = :owner and project_id = :id and number = :number",
                    change.dropped().stream()
                            .map(number -> Bound.id(change.project()).whole("number", number))
                            .toList());
            return addStates(one, change);
        });
    }

    private static int addStates(Rows one, ProjectChange change) {
        one.putAll(
                "insert into project_state (owner_id, project_id, number, label, field, content)"
                        + " values (:owner, :id, :number, :label, :field, :content)",
                change.added().stream()
                        .map(state -> Bound.id(change.project())
                                .whole("number", state.number())
                                .text("label", state.label())
                                .text("field", state.field())
                                .text("content", state.content()))
                        .toList());
        return change.added().size();
    }

    private Bound values(ProjectChange change) {
        return Bound.id(change.project())
                .text("name", change.head().name())
                .text("person", change.head().person())
                .text("pattern", change.head().pattern())
                .text("size", change.head().size())
                .whole("state", change.state())
                .text("sought", Rows.small(change.head().name()))
                .whole("now", rows.now())
                .whole("to", change.to());
    }

    @Override
    public boolean archive(String id, boolean away) {
        return rows.put(
                        "update project set archived = :away where owner_id = :owner and id = :id",
                        Bound.id(id).flag("away", away))
                == 1;
    }

    @Override
    public boolean delete(String id) {
        return rows.together(one -> {
            ProjectRows mine = new ProjectRows(one);
            Optional<KeptProject> project = mine.find(id);
            project.ifPresent(gone -> {
                mine.deleteRow(id);
                gone.head().person().ifPresent(person -> {
                    new AccessRows(one).note(one.owner(), person, "deleted a project");
                    forgetIfNothingIsKept(one, person);
                });
                new FileRows(one).sweep();
            });
            return project.isPresent();
        });
    }

    /** What hangs on the project goes with it by the tables' own rules; the days stay with the person. */
    void deleteRow(String id) {
        rows.put(
                "update measuring_day set project_id = null where owner_id = :owner and project_id = :id",
                Bound.id(id));
        rows.put("delete from project where owner_id = :owner and id = :id", Bound.id(id));
    }

    private static void forgetIfNothingIsKept(Rows one, String person) {
        one.put(
                "delete from person where owner_id = :owner and id = :id and note = '' and photo is null"
                        + " and not exists (select 1 from project p where p.owner_id = :owner and p.person_id = person.id)"
                        + " and not exists (select 1 from reading r"
                        + "   join measuring_day d on d.owner_id = r.owner_id and d.id = r.day_id"
                        + "   where d.owner_id = :owner and d.person_id = person.id)",
                Bound.id(person));
    }

    private static KeptProject project(ResultSet row) throws SQLException {
        return new KeptProject(
                row.getString("id"),
                new KeptProject.Head(
                        row.getString("name"),
                        Optional.ofNullable(row.getString("person_id")),
                        Optional.ofNullable(row.getString("pattern_id")),
                        row.getString("size")),
                row.getString("person_label"),
                row.getString("garment"),
                row.getLong("state_number"),
                row.getInt("archived") == 1,
                row.getLong("changed_at"),
                row.getLong("version"));
    }
}
