package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.person.People;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.Sought;

/** People as rows. */
public final class PersonRows implements People {

    private final Rows rows;

    /**
     * People as rows.
     *
     * @param rows the owner's rows
     */
    public PersonRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public List<Person> list(String text, boolean archivedToo) {
        return rows.all(
                "select * from person where owner_id = :owner and sought like :text escape '!'"
                        + (archivedToo ? "" : " and archived = 0")
                        + " order by changed_at desc, id",
                Bound.none().part("text", text),
                (row, context) -> person(row));
    }

    @Override
    public Optional<Person> find(String id) {
        return rows.first(
                "select * from person where owner_id = :owner and id = :id",
                Bound.id(id),
                (row, context) -> person(row));
    }

    @Override
    public Person add(Person person) {
        String id = Rows.fresh();
        return rows.together(one -> {
            one.put(
                    "insert into person (id, owner_id, label, note, units, population, photo, archived, sought,"
                            + " created_at, changed_at, version) values (:id, :owner, :label, :note, :units, :population,"
                            + " :photo, :archived, :sought, :now, :now, 1)",
                    values(person, id));
            return new PersonRows(one).find(id).orElseThrow();
        });
    }

    @Override
    public Person change(Person person) {
        return rows.together(one -> {
            one.putOne(
                    "person",
                    "update person set label = :label, note = :note, units = :units, population = :population,"
                            + " photo = :photo, archived = :archived, sought = :sought,"
                            + " changed_at = :now, version = version + 1"
                            + " where owner_id = :owner and id = :id and version = :version",
                    values(person, person.id()).whole("version", person.version()));
            return new PersonRows(one).find(person.id()).orElseThrow();
        });
    }

    @Override
    public boolean erase(String id) {
        return rows.together(one -> {
            ProjectRows projects = new ProjectRows(one);
            for (KeptProject project : projects.list(Sought.of(id))) {
                projects.deleteRow(project.id());
            }
            boolean was = one.put("delete from person where owner_id = :owner and id = :id", Bound.id(id)) == 1;
            if (was) {
                new AccessRows(one).note(one.owner(), id, "erased");
            }
            new FileRows(one).sweep();
            return was;
        });
    }

    private Bound values(Person person, String id) {
        return Bound.id(id)
                .text("label", person.label())
                .text("note", person.note())
                .text("units", person.units())
                .text("population", person.population())
                .text("photo", person.photo())
                .flag("archived", person.archived())
                .text("sought", Rows.small(person.label() + "\n" + person.note()))
                .whole("now", rows.now());
    }

    private static Person person(ResultSet row) throws SQLException {
        return new Person(
                row.getString("id"),
                row.getString("label"),
                row.getString("note"),
                row.getString("units"),
                row.getString("population"),
                Optional.ofNullable(row.getString("photo")),
                row.getInt("archived") == 1,
                row.getLong("changed_at"),
                row.getLong("version"));
    }
}
