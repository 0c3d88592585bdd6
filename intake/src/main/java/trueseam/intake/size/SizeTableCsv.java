package trueseam.intake.size;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.garment.size.Figure;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.garment.size.SizeTableException;
import trueseam.intake.sheet.ExactLength;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetException;
import trueseam.intake.sheet.SheetRow;

/**
 * A size table as a sheet: one line a size, one column a measure.
 *
 * <pre>
 * # name: misses
 * # source: who published it
 * # unit: in
 * # figure type: Misses
 * # stated height: 5 ft 5 in to 5 ft 6 in
 * # note on stature: computed, the middle of the stated height
 * size,bust girth,waist girth,stature
 * 14,36,28,65 1/2
 * </pre>
 *
 * <p>Columns are standard terms or workroom labels. Name and source are needed; unit is {@code in}, {@code cm} or
 * {@code mm} and is what a bare number means; the rest may be left out.
 */
public final class SizeTableCsv {
    private static final String NOTE_ON = "note on ";

    private SizeTableCsv() {}

    /**
     * Reads a size table.
     *
     * @param file what the user calls the file
     * @param text its content
     * @return the table
     * @throws SheetException naming the line that cannot be used
     */
    public static SizeTable read(String file, String text) {
        return read(Sheet.read(file, text));
    }

    static SizeTable read(Sheet sheet) {
        int size = sheet.needColumn("size");
        LengthUnit unit = unit(sheet);
        Map<Integer, Measure> columns = new LinkedHashMap<>();
        for (int column = 0; column < sheet.header().size(); column++) {
            if (column != size) {
                columns.put(column, measure(sheet, sheet.header().get(column)));
            }
        }
        List<SizeRow> rows = new ArrayList<>();
        for (SheetRow row : sheet.rows()) {
            rows.add(row(sheet, row, size, columns, unit));
        }
        try {
            return new SizeTable(
                    need(sheet, "name"),
                    need(sheet, "source"),
                    List.copyOf(columns.values()),
                    rows,
                    new Figure(
                            sheet.remarks().getOrDefault("figure type", ""),
                            sheet.remarks().getOrDefault("stated height", "")),
                    notes(sheet));
        } catch (SizeTableException e) {
            throw new SheetException(sheet.file(), 0, e.getMessage());
        }
    }

    private static SizeRow row(Sheet sheet, SheetRow row, int size, Map<Integer, Measure> columns, LengthUnit unit) {
        if (row.cells().size() > sheet.header().size()) {
            throw new SheetException(
                    sheet.file(),
                    row.line(),
                    "The line has more cells than the header; put a value with a decimal comma in quotes, as \"95,2\".");
        }
        if (row.cell(size).isEmpty()) {
            throw new SheetException(sheet.file(), row.line(), "The size has no name.");
        }
        Map<Measure, Double> mm = new EnumMap<>(Measure.class);
        columns.forEach((column, measure) -> mm.put(measure, value(sheet, row, column, measure, unit)));
        return new SizeRow(row.cell(size), mm);
    }

    private static double value(Sheet sheet, SheetRow row, int column, Measure measure, LengthUnit unit) {
        try {
            double mm = Length.parse(row.cell(column), unit).mm();
            if (mm <= 0) {
                throw new SheetException(
                        sheet.file(),
                        row.line(),
                        "The " + measure.term() + " must be above zero, not " + row.cell(column) + ".");
            }
            return mm;
        } catch (LengthTextException e) {
            throw new SheetException(sheet.file(), row.line(), "The " + measure.term() + ": " + e.getMessage());
        }
    }

    private static Measure measure(Sheet sheet, String name) {
        try {
            return Measure.named(name);
        } catch (UnknownMeasureException e) {
            throw new SheetException(sheet.file(), 0, "Of the header: " + e.getMessage());
        }
    }

    private static String need(Sheet sheet, String remark) {
        String value = sheet.remarks().getOrDefault(remark, "");
        if (value.isEmpty()) {
            throw new SheetException(
                    sheet.file(), 0, "A line \"# " + remark + ": ...\" above the header was expected; add it.");
        }
        return value;
    }

    private static LengthUnit unit(Sheet sheet) {
        String sign = sheet.remarks().getOrDefault("unit", "in").toLowerCase(Locale.ROOT);
        for (LengthUnit unit : LengthUnit.values()) {
            if (unit.sign().equals(sign)) {
                return unit;
            }
        }
        throw new SheetException(sheet.file(), 0, "The unit is \"" + sign + "\"; in, cm or mm was expected.");
    }

    private static Map<Measure, String> notes(Sheet sheet) {
        Map<Measure, String> notes = new EnumMap<>(Measure.class);
        sheet.remarks().forEach((name, value) -> {
            if (name.startsWith(NOTE_ON)) {
                notes.put(measure(sheet, name.substring(NOTE_ON.length())), value);
            }
        });
        return notes;
    }

    /**
     * Writes a size table; reading it gives an equal table back.
     *
     * @param table the table
     * @param wished the unit to write in; a value that this unit cannot show exactly is written in millimetres
     * @return the sheet's text
     */
    public static String write(SizeTable table, LengthUnit wished) {
        Map<String, String> remarks = new LinkedHashMap<>();
        remarks.put("name", table.name());
        remarks.put("source", table.source());
        remarks.put("unit", wished.sign());
        if (!table.figure().type().isEmpty()) {
            remarks.put("figure type", table.figure().type());
        }
        if (!table.figure().statedHeight().isEmpty()) {
            remarks.put("stated height", table.figure().statedHeight());
        }
        for (Measure measure : table.columns()) {
            if (table.notes().containsKey(measure)) {
                remarks.put(NOTE_ON + measure.term(), table.notes().get(measure));
            }
        }
        List<String> header = new ArrayList<>(List.of("size"));
        table.columns().forEach(measure -> header.add(measure.term()));
        List<SheetRow> rows = new ArrayList<>();
        for (SizeRow row : table.rows()) {
            List<String> cells = new ArrayList<>(List.of(row.size()));
            table.columns().forEach(measure -> cells.add(cell(row.mm().get(measure), wished)));
            rows.add(new SheetRow(0, cells));
        }
        return new Sheet("", remarks, header, rows).text();
    }

    private static String cell(double mm, LengthUnit wished) {
        String text = ExactLength.write(mm, wished);
        String bare = " " + wished.sign();
        return text.endsWith(bare) ? text.substring(0, text.length() - bare.length()) : text;
    }
}
