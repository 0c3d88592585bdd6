package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trueseam.records.archive.ArchiveException;

/**
 * The tables that go into an archive, in an order in which they can be put back: what a row hangs on comes before it. A column is a
 * text, or {@code #} a whole number, {@code ?} a text that may be missing, {@code ~} a number that may be missing.
 */
enum ArchiveTable {
    /** What is wanted of one person is known only when all that names files was read. */
    FILE("file", "mark", "mark #size #kept_at", "1 = 1"),
    PERSON(
            "person",
            "id",
            "id label note units population ?photo #archived sought #created_at #changed_at #version",
            "id = :person"),
    PATTERN(
            "pattern",
            "id",
            "id made_of name garment source size_table note #archived sought #created_at #changed_at #version",
            "id in (select pattern_id from project where owner_id = :owner and person_id = :person)"),
    PATTERN_FILE(
            "pattern_file",
            "pattern_id, mark",
            "pattern_id mark name",
            "pattern_id in (select pattern_id from project where owner_id = :owner and person_id = :person)"),
    PROJECT(
            "project",
            "id",
            "id name ?person_id ?pattern_id size #state_number #archived sought #created_at #changed_at #version",
            "person_id = :person"),
    PROJECT_STATE("project_state", "project_id, number", "project_id #number label field content", ofProject()),
    MEASURING_DAY(
            "measuring_day",
            "person_id, project_id, place, id",
            "id person_id ?project_id #place measured_on note",
            "person_id = :person"),
    READING(
            "reading",
            "day_id, place",
            "day_id #place measure side typed unit origin note ~mm",
            "day_id in (select id from measuring_day where owner_id = :owner and person_id = :person)"),
    /** Which of them a project was taken up with, what was typed tells. */
    SIZE_TABLE("size_table", "id", "id name source mark #archived #created_at #changed_at #version", "1 = 1"),
    FIT("fit", "id", "id project_id #project_version #made_at #proved report ?altered", ofProject()),
    PRINT("print", "id", "id project_id fit_id kind choices #made_at", ofProject()),
    SITTING("sitting", "id", "id project_id #place held_on", ofProject()),
    FINDING(
            "finding",
            "sitting_id, place",
            "sitting_id #place symptom cause alteration amount ~amount_mm measured_as side note",
            "sitting_id in (select s.id from sitting s join project p on p.owner_id = s.owner_id and p.id = s.project_id"
                    + " where s.owner_id = :owner and p.person_id = :person)"),
    /** What she wants to be told belongs to everything of hers, and to no one person. */
    MEASURE_AGAIN("measure_again", "months", "#months #growing_months", "1 = 0"),
    ACCESS("access", "happened_at, id", "id #account_id person_id what #happened_at", "person_id = :person");

    private final String table;
    private final String order;
    private final Map<String, Kind> columns;
    private final String ofPerson;

    /** What a column holds. */
    private enum Kind {
        TEXT,
        WHOLE,
        PERHAPS_TEXT,
        PERHAPS_NUMBER
    }

    ArchiveTable(String table, String order, String columns, String ofPerson) {
        this.table = table;
        this.order = order;
        this.columns = Arrays.stream(columns.split(" "))
                .collect(Collectors.toMap(
                        column -> column.replaceFirst("^[#?~]", ""),
                        ArchiveTable::kind,
                        (a, b) -> a,
                        LinkedHashMap::new));
        this.ofPerson = ofPerson;
    }

    private static Kind kind(String column) {
        return switch (column.charAt(0)) {
            case '#' -> Kind.WHOLE;
            case '?' -> Kind.PERHAPS_TEXT;
            case '~' -> Kind.PERHAPS_NUMBER;
            default -> Kind.TEXT;
        };
    }

    private static String ofProject() {
        return "project_id in (select id from project where owner_id = :owner and person_id = :person)";
    }

    List<String> columns() {
        return List.copyOf(columns.keySet());
    }

    /** In an order that two databases agree on. */
    List<Map<String, String>> rows(Rows rows, Optional<String> person) {
        String sql = "select " + String.join(", ", columns.keySet()) + " from " + table + " where owner_id = :owner"
                + (person.isPresent() ? " and " + ofPerson : "") + " order by " + order;
        Bound values = Bound.none();
        if (person.isPresent() && ofPerson.contains(":person")) {
            values.text("person", person.get());
        }
        return rows.all(sql, values, (row, context) -> cells(row));
    }

    private Map<String, String> cells(ResultSet row) throws SQLException {
        Map<String, String> cells = new LinkedHashMap<>();
        for (var column : columns.entrySet()) {
            cells.put(column.getKey(), cell(row, column.getKey(), column.getValue()));
        }
        return cells;
    }

    private static String cell(ResultSet row, String column, Kind kind) throws SQLException {
        return switch (kind) {
            case TEXT -> row.getString(column);
            case WHOLE -> Long.toString(row.getLong(column));
            case PERHAPS_TEXT -> Optional.ofNullable(row.getString(column)).orElse("");
            case PERHAPS_NUMBER -> {
                OptionalDouble number = DayRows.number(row, column);
                yield number.isPresent() ? Double.toString(number.getAsDouble()) : "";
            }
        };
    }

    /** Puts a row back, unless there is one with its key. */
    boolean put(Rows rows, Map<String, String> cells) {
        return put(rows, cells, Optional.empty());
    }

    /** Puts a row back with the bytes that belong to it. */
    boolean put(Rows rows, Map<String, String> cells, Optional<byte[]> content) {
        String names = String.join(", ", columns.keySet()) + (content.isPresent() ? ", content" : "");
        String values = columns.keySet().stream().map(name -> ":" + name).collect(Collectors.joining(", "))
                + (content.isPresent() ? ", :content" : "");
        Bound bound = bound(cells);
        content.ifPresent(bytes -> bound.bytes("content", bytes));
        return rows.put(
                        "insert into " + table + " (owner_id, " + names + ") values (:owner, " + values
                                + ") on conflict do nothing",
                        bound)
                == 1;
    }

    private Bound bound(Map<String, String> cells) {
        Bound bound = Bound.none();
        columns.forEach((name, kind) -> {
            String cell = cells.get(name);
            if (cell == null || cell.indexOf('\0') >= 0) {
                throw new ArchiveException("a line of " + table + " has no " + name + " that can be read");
            }
            try {
                switch (kind) {
                    case TEXT -> bound.text(name, cell);
                    case WHOLE -> bound.whole(name, Long.parseLong(cell));
                    case PERHAPS_TEXT -> bound.text(name, Optional.of(cell).filter(text -> !text.isEmpty()));
                    case PERHAPS_NUMBER -> bound.number(name, number(cell));
                }
            } catch (NumberFormatException e) {
                throw new ArchiveException("a line of " + table + " has no number in " + name);
            }
        });
        return bound;
    }

    private static OptionalDouble number(String cell) {
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(cell);
        if (!Double.isFinite(number)) {
            throw new NumberFormatException(cell);
        }
        return OptionalDouble.of(number);
    }
}
