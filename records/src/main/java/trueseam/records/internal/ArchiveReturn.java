package trueseam.records.internal;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trueseam.records.archive.ArchiveException;
import trueseam.records.archive.Brought;

/**
 * Bringing an archive back. What is there already (a person, project, pattern or size table with the same id) stays as it is, with all
 * that hangs on it: it may have been changed since, and two halves of two versions are neither. Used by one thread, in one transaction.
 */
final class ArchiveReturn {

    private final Rows rows;
    private final ArchiveZip zip;
    private final Map<ArchiveTable, Set<String>> there = new HashMap<>();
    private final Map<ArchiveTable, Set<String>> came = new HashMap<>();

    /** A pattern made of the same file is the same pattern, whatever its id. */
    private final Map<String, String> samePattern = new HashMap<>();

    private int leftAlone;

    ArchiveReturn(Rows rows, ArchiveZip zip) {
        this.rows = rows;
        this.zip = zip;
    }

    Brought run() {
        files();
        people();
        patterns();
        projects();
        hanging();
        return new Brought(
                came.get(ArchiveTable.PERSON).size(),
                came.get(ArchiveTable.PROJECT).size(),
                came.get(ArchiveTable.PATTERN).size(),
                leftAlone);
    }

    private void files() {
        for (Map<String, String> line : ArchiveText.rows("files.csv", zip.bytes("files.csv"), ArchiveFiles.COLUMNS)) {
            String name = line.get("file");
            if (!zip.sum(name).equals(line.get("mark"))) {
                throw new ArchiveException("the file " + line.get("mark") + " of files.csv is not in it");
            }
            byte[] content = zip.bytes(name);
            line.put("size", Integer.toString(content.length));
            ArchiveTable.FILE.put(rows, line, Optional.of(content));
        }
    }

    private void people() {
        top(ArchiveTable.PERSON, lines(ArchiveTable.PERSON));
    }

    private void patterns() {
        Map<String, String> madeOf = ArchiveTable.PATTERN.rows(rows, Optional.empty()).stream()
                .collect(Collectors.toMap(line -> line.get("made_of"), line -> line.get("id")));
        List<Map<String, String>> lines = lines(ArchiveTable.PATTERN);
        lines.forEach(line -> Optional.ofNullable(madeOf.get(line.get("made_of")))
                .ifPresent(id -> samePattern.put(line.get("id"), id)));
        leftAlone += samePattern.size();
        top(
                ArchiveTable.PATTERN,
                lines.stream()
                        .filter(line -> !samePattern.containsKey(line.get("id")))
                        .toList());
        each(ArchiveTable.PATTERN_FILE, line -> came(ArchiveTable.PATTERN, line.get("pattern_id")));
    }

    private void projects() {
        for (String name : zip.in("projects")) {
            JsonNode json = ArchiveText.json(name, zip.bytes(name));
            Map<String, String> project = ArchiveText.cells(json, ArchiveTable.PROJECT.columns(), name);
            project.computeIfPresent("pattern_id", (column, id) -> samePattern.getOrDefault(id, id));
            String id = project.get("id");
            List<Map<String, String>> states = ArchiveText.states(name, id, json);
            if (states.stream().noneMatch(state -> state.get("number").equals(project.get("state_number")))) {
                throw new ArchiveException(name + " has not the state that it is in");
            }
            top(ArchiveTable.PROJECT, List.of(project));
            if (came(ArchiveTable.PROJECT, id)) {
                states.forEach(state -> put(ArchiveTable.PROJECT_STATE, state));
            }
        }
        came.computeIfAbsent(ArchiveTable.PROJECT, table -> new HashSet<>());
    }

    private void hanging() {
        Predicate<Map<String, String>> ofProject = line -> came(ArchiveTable.PROJECT, line.get("project_id"));
        // The days of a project that was deleted stayed with the person.
        Set<String> stayed = ids(ArchiveTable.MEASURING_DAY);
        Set<String> days = each(
                ArchiveTable.MEASURING_DAY,
                line -> !stayed.contains(line.get("id"))
                        && (line.get("project_id").isEmpty()
                                ? came(ArchiveTable.PERSON, line.get("person_id"))
                                : ofProject.test(line)));
        each(ArchiveTable.READING, line -> days.contains(line.get("day_id")));
        top(ArchiveTable.SIZE_TABLE, lines(ArchiveTable.SIZE_TABLE));
        each(ArchiveTable.FIT, ofProject);
        each(ArchiveTable.PRINT, ofProject);
        Set<String> sittings = each(ArchiveTable.SITTING, ofProject);
        reminding();
        each(ArchiveTable.FINDING, line -> sittings.contains(line.get("sitting_id")));
    }

    /** Archives of earlier versions have none; what she told this record book goes before what she told that one. */
    private void reminding() {
        if (zip.has(ArchiveRows.csvOf(ArchiveTable.MEASURE_AGAIN))) {
            lines(ArchiveTable.MEASURE_AGAIN).forEach(line -> ArchiveTable.MEASURE_AGAIN.put(rows, line));
        }
    }

    private boolean came(ArchiveTable table, String id) {
        return came.getOrDefault(table, Set.of()).contains(id);
    }

    private List<Map<String, String>> lines(ArchiveTable table) {
        String name = ArchiveRows.csvOf(table);
        return ArchiveText.rows(name, zip.bytes(name), table.columns());
    }

    /** What stands for itself: what is there already is left alone. */
    private void top(ArchiveTable table, List<Map<String, String>> lines) {
        Set<String> before = there.computeIfAbsent(table, this::ids);
        Set<String> added = came.computeIfAbsent(table, none -> new HashSet<>());
        for (Map<String, String> line : lines) {
            if (before.contains(line.get("id"))) {
                leftAlone++;
            } else {
                put(table, line);
                added.add(line.get("id"));
            }
        }
    }

    private Set<String> ids(ArchiveTable table) {
        return table.rows(rows, Optional.empty()).stream()
                .map(line -> line.get("id"))
                .collect(Collectors.toSet());
    }

    /** What hangs on something: those lines that hang on something that came. */
    private Set<String> each(ArchiveTable table, Predicate<Map<String, String>> wanted) {
        Set<String> ids = new HashSet<>();
        for (Map<String, String> line : lines(table)) {
            if (wanted.test(line)) {
                put(table, line);
                ids.add(line.getOrDefault("id", ""));
            }
        }
        return ids;
    }

    private void put(ArchiveTable table, Map<String, String> line) {
        if (!table.put(rows, line)) {
            throw new ArchiveException(
                    "a line of it is in the record book already, under another owner or with something else");
        }
    }
}
