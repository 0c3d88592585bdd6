package trueseam.records.internal;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import trueseam.records.archive.Archive;
import trueseam.records.archive.ArchiveException;
import trueseam.records.archive.Brought;
import trueseam.records.archive.Made;
import trueseam.records.trouble.RecordBookException;
import trueseam.records.trouble.Trouble;

/** An archive of an owner's rows. */
public final class ArchiveRows implements Archive {

    private static final String READ_ME = """
            This is a record book of Trueseam, or all of one person in it, in open formats. manifest.json lists every file with its
            size and SHA-256.

            people.csv, days.csv, readings.csv     who was measured, when, and what (mm: millimetres; typed: as it was written)
            sittings.csv, findings.csv             what was seen and pinned on trial garments
            patterns.csv, pattern-files.csv        the patterns, and the files that they are in
            size-tables.csv, fits.csv, prints.csv  size tables of your own, what fits came to, what was printed
            projects/                              every project with all that was typed, state after state
            files.csv                              which file is which mark; the files lie in patterns, altered, reports, tables,
                                                   photos and files
            made/                                  step sheets and charts, worked anew when this archive was made
            measure-again.csv                      after how many months people are measured again
            access.csv                             who looked at or changed whose measures (only for reading)

            Times (.._at) are milliseconds since 1970. Back with: trueseam book bring-back THIS.zip
            """;

    private final Rows rows;

    /**
     * An archive of an owner's rows.
     *
     * @param rows the owner's rows
     */
    public ArchiveRows(Rows rows) {
        this.rows = rows;
    }

    /** The tables that are CSV; files and projects have their own ways. */
    static String csvOf(ArchiveTable table) {
        return switch (table) {
            case FILE -> "files.csv";
            case PERSON -> "people.csv";
            case PATTERN -> "patterns.csv";
            case PATTERN_FILE -> "pattern-files.csv";
            case PROJECT, PROJECT_STATE -> throw new IllegalArgumentException(table + " is JSON");
            case MEASURING_DAY -> "days.csv";
            case READING -> "readings.csv";
            case SIZE_TABLE -> "size-tables.csv";
            case FIT -> "fits.csv";
            case PRINT -> "prints.csv";
            case SITTING -> "sittings.csv";
            case FINDING -> "findings.csv";
            case MEASURE_AGAIN -> "measure-again.csv";
            case ACCESS -> "access.csv";
        };
    }

    @Override
    public int write(OutputStream out, Optional<String> person, long by, Function<String, List<Made>> made) {
        note(person, by);
        ArchiveSheets sheets = new ArchiveSheets(out);
        List<String> projects = rows.atOneMoment(one -> written(one, sheets, person));
        for (String project : projects) {
            for (Made file : made.apply(project)) {
                sheets.add("made/" + project + "/" + file.name(), file.content());
            }
        }
        sheets.end(person.isEmpty() ? "everything" : "one person", rows.now());
        return projects.size();
    }

    /** Before anything is given away, so that nothing is without being noted. */
    private void note(Optional<String> person, long by) {
        AccessRows trail = new AccessRows(rows);
        rows
                .all(
                        "select id from person where owner_id = :owner",
                        Bound.none(),
                        (row, context) -> row.getString("id"))
                .stream()
                .filter(id -> person.isEmpty() || person.get().equals(id))
                .forEach(id -> trail.note(by, id, "took away"));
    }

    private static List<String> written(Rows one, ArchiveSheets sheets, Optional<String> person) {
        sheets.add("read-me.txt", READ_ME.getBytes(StandardCharsets.UTF_8));
        ArchiveFiles files = new ArchiveFiles();
        List<Map<String, String>> projects = ArchiveTable.PROJECT.rows(one, person);
        Map<String, List<Map<String, String>>> states = ArchiveTable.PROJECT_STATE.rows(one, person).stream()
                .collect(Collectors.groupingBy(state -> state.get("project_id")));
        for (Map<String, String> project : projects) {
            List<Map<String, String>> its = states.getOrDefault(project.get("id"), List.of());
            sheets.add("projects/" + project.get("id") + ".json", ArchiveText.project(project, its));
            its.forEach(state -> files.named(state.get("content")));
        }
        for (ArchiveTable table : List.of(
                ArchiveTable.PERSON,
                ArchiveTable.PATTERN,
                ArchiveTable.PATTERN_FILE,
                ArchiveTable.MEASURING_DAY,
                ArchiveTable.READING,
                ArchiveTable.SIZE_TABLE,
                ArchiveTable.FIT,
                ArchiveTable.PRINT,
                ArchiveTable.SITTING,
                ArchiveTable.FINDING,
                ArchiveTable.MEASURE_AGAIN,
                ArchiveTable.ACCESS)) {
            List<Map<String, String>> lines = table.rows(one, person).stream()
                    .filter(line -> person.isEmpty() || table != ArchiveTable.SIZE_TABLE || files.isNamed(line))
                    .toList();
            sheets.add(csvOf(table), ArchiveText.csv(table.columns(), lines));
            lines.forEach(line -> files.of(table, line));
        }
        sheets.add(csvOf(ArchiveTable.FILE), files.written(one, sheets, person.isEmpty()));
        return projects.stream().map(project -> project.get("id")).toList();
    }

    @Override
    public Brought bringBack(Path archive) {
        try (ArchiveZip zip = ArchiveZip.open(archive)) {
            return rows.together(one -> new ArchiveReturn(one, zip).run());
        } catch (RecordBookException e) {
            if (e.trouble() == Trouble.REFUSED) {
                throw new ArchiveException("a line in it hangs on something that is not in it");
            }
            throw e;
        }
    }
}
