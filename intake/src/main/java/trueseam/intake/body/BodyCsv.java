package trueseam.intake.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetException;
import trueseam.intake.sheet.SheetRow;

/**
 * A body as a table, one line a reading.
 *
 * <pre>
 * # label: Ann
 * measure,value,side,date
 * bust girth,38 1/2 in
 * Hip,104 cm
 * shoulder length,5 in,left,2026-03-09
 * </pre>
 *
 * <p>{@code measure} is a standard term or a workroom label; {@code side} (left, right, both), {@code date}, {@code
 * origin} (taped, table, stand-in, estimated) and {@code note} may be left out. A value is written with its unit; without
 * one it is in the unit of the {@link EntryRules}.
 */
public final class BodyCsv {
    private static final List<String> COLUMNS = List.of("measure", "value", "side", "date", "origin", "note");

    private BodyCsv() {}

    /**
     * Reads a body.
     *
     * @param file what the user calls the file; without a {@code label} remark it is also the body's label
     * @param text its content
     * @param rules how entries are taken
     * @return the body and the findings, line by line
     * @throws SheetException when the file has no header with {@code measure} and {@code value}
     */
    public static BodyFile read(String file, String text, EntryRules rules) {
        Sheet sheet = Sheet.read(file, text);
        int measure = sheet.needColumn("measure");
        int value = sheet.needColumn("value");
        List<Finding> findings = new ArrayList<>(unknownColumns(sheet));
        List<Reading> readings = new ArrayList<>();
        for (SheetRow row : sheet.rows()) {
            String place = SheetException.place(file, row.line());
            if (row.cells().size() > sheet.header().size()) {
                findings.add(Finding.failure(
                        place,
                        "The line has " + row.cells().size() + " cells but the header "
                                + sheet.header().size()
                                + "; put a value with a decimal comma in quotes, as \"95,2 cm\"."));
                continue;
            }
            Entry entry = new Entry(
                    row.cell(measure),
                    row.cell(value),
                    cell(row, sheet.column("side")),
                    cell(row, sheet.column("date")),
                    cell(row, sheet.column("origin")),
                    asWritten(row, sheet.column("note")));
            Entry.Outcome outcome = entry.read(place, rules);
            outcome.reading().ifPresent(readings::add);
            outcome.finding().ifPresent(findings::add);
        }
        String label = BodyFile.label(sheet.remarks().getOrDefault("label", ""), file);
        return new BodyFile(new Body(label, readings), findings);
    }

    private static String cell(SheetRow row, OptionalInt column) {
        return column.isPresent() ? row.cell(column.getAsInt()) : "";
    }

    /** A note is the user's own words: blanks around it are kept too. */
    private static String asWritten(SheetRow row, OptionalInt column) {
        return column.isPresent() && column.getAsInt() < row.cells().size()
                ? row.cells().get(column.getAsInt())
                : "";
    }

    private static List<Finding> unknownColumns(Sheet sheet) {
        return sheet.header().stream()
                .filter(name -> COLUMNS.stream().noneMatch(name::equalsIgnoreCase))
                .map(name -> Finding.note(
                        sheet.file(),
                        "The column \"" + name + "\" is not read; columns are " + String.join(", ", COLUMNS) + "."))
                .toList();
    }

    /**
     * Writes a body; reading it gives an equal body back.
     *
     * @param body the body
     * @param wished the unit to write in; a value that this unit cannot show exactly is written in millimetres
     * @return the table, without the columns that no reading uses
     */
    public static String write(Body body, LengthUnit wished) {
        List<Entry> entries = body.readings().stream()
                .map(reading -> Entry.of(reading, wished))
                .toList();
        Map<String, List<String>> columns = new LinkedHashMap<>();
        columns.put("measure", entries.stream().map(Entry::measure).toList());
        columns.put("value", entries.stream().map(Entry::value).toList());
        columns.put("side", entries.stream().map(Entry::side).toList());
        columns.put("date", entries.stream().map(Entry::date).toList());
        columns.put("origin", entries.stream().map(Entry::origin).toList());
        columns.put("note", entries.stream().map(Entry::note).toList());
        Set<String> always = Set.of("measure", "value");
        columns.entrySet()
                .removeIf(column -> !always.contains(column.getKey())
                        && column.getValue().stream().allMatch(String::isEmpty));
        List<SheetRow> rows = new ArrayList<>();
        for (int row = 0; row < entries.size(); row++) {
            int at = row;
            rows.add(new SheetRow(
                    0, columns.values().stream().map(cells -> cells.get(at)).toList()));
        }
        return new Sheet("", Map.of("label", body.label()), List.copyOf(columns.keySet()), rows).text();
    }
}
