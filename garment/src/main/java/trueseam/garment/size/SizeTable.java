package trueseam.garment.size;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.measure.Measure;

/**
 * A table of body measures, size by size.
 *
 * @param name what it is called here, such as {@code misses}; never blank
 * @param source who published it, or how it was computed; never blank
 * @param columns the measures it gives, in the order of the table
 * @param rows the sizes, from small to large as the table has them; each gives every column
 * @param figure the figure type and stated height, both empty when unknown
 * @param notes what a reader must know about a column that is not plainly published, such as a height computed from
 *     the stated range
 */
public record SizeTable(
        String name,
        String source,
        List<Measure> columns,
        List<SizeRow> rows,
        Figure figure,
        Map<Measure, String> notes) {

    /**
     * Checks that the table is whole: rows, no size twice, every row with every column and no other, notes of columns.
     *
     * @param name as of the record
     * @param source as of the record
     * @param columns as of the record
     * @param rows as of the record
     * @param figure as of the record
     * @param notes as of the record
     * @throws SizeTableException naming the size and the measure that is wrong
     */
    public SizeTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notes = Map.copyOf(notes);
        if (!isLine(name) || !isLine(source)) {
            throw new SizeTableException(
                    name, "name and source", "A size table needs a name and a source, each of one line.");
        }
        for (Map.Entry<Measure, String> note : notes.entrySet()) {
            if (!columns.contains(note.getKey()) || !isLine(note.getValue())) {
                throw new SizeTableException(
                        name,
                        note.getKey().term(),
                        "Size table \"" + name + "\" has a note on "
                                + note.getKey().term() + ", which is not a column or not of one line.");
            }
        }
        if (rows.isEmpty() || columns.isEmpty()) {
            throw new SizeTableException(name, "rows", "Size table \"" + name + "\" has no sizes or no measures.");
        }
        Set<String> seen = new HashSet<>();
        for (SizeRow row : rows) {
            if (!seen.add(row.size())) {
                throw new SizeTableException(
                        name, row.size(), "Size table \"" + name + "\" has size " + row.size() + " twice.");
            }
            checkColumns(name, columns, row);
        }
    }

    /**
     * A table of which nothing but its numbers and their source is known.
     *
     * @param name what it is called here
     * @param source who published it
     * @param columns the measures it gives
     * @param rows the sizes
     */
    public SizeTable(String name, String source, List<Measure> columns, List<SizeRow> rows) {
        this(name, source, columns, rows, new Figure("", ""), Map.of());
    }

    private static boolean isLine(String text) {
        return !text.isBlank() && text.equals(text.strip()) && text.lines().count() == 1;
    }

    private static void checkColumns(String name, List<Measure> columns, SizeRow row) {
        if (new HashSet<>(columns).size() != columns.size()) {
            throw new SizeTableException(name, "columns", "Size table \"" + name + "\" has a measure twice.");
        }
        for (Measure measure : columns) {
            if (row.value(measure).isEmpty()) {
                throw new SizeTableException(
                        name,
                        measure.term(),
                        "Size table \"" + name + "\" gives no " + measure.term() + " for size " + row.size() + ".");
            }
        }
        if (row.mm().size() != columns.size()) {
            throw new SizeTableException(
                    name,
                    row.size(),
                    "Size table \"" + name + "\" gives size " + row.size() + " a measure that is not a column.");
        }
    }

    /**
     * One size.
     *
     * @param size what it is called; case and blanks around it do not matter
     * @return its row
     * @throws SizeTableException naming the sizes there are, when there is no such size
     */
    public SizeRow row(String size) {
        return rows.stream()
                .filter(row -> row.size().equalsIgnoreCase(size.strip()))
                .findFirst()
                .orElseThrow(() -> new SizeTableException(
                        name,
                        size,
                        "Size table \"" + name + "\" has no size " + size.strip() + "; it has "
                                + rows.stream().map(SizeRow::size).collect(Collectors.joining(", ")) + "."));
    }

    /**
     * One measure of one size.
     *
     * @param size what the size is called
     * @param measure the measure
     * @return mm
     * @throws SizeTableException when there is no such size or column
     */
    public double mm(String size, Measure measure) {
        SizeRow row = row(size);
        if (!has(measure)) {
            throw new SizeTableException(
                    name,
                    measure.term(),
                    "Size table \"" + name + "\" has no column " + measure.term() + "; it has "
                            + columns.stream().map(Measure::term).collect(Collectors.joining(", ")) + ".");
        }
        return row.mm().get(measure);
    }

    /**
     * Whether the table gives a measure.
     *
     * @param measure the measure
     * @return true when it is a column
     */
    public boolean has(Measure measure) {
        return columns.contains(measure);
    }

    /**
     * The typical body of a size, labelled with table and size; columns that are not plainly published carry their note.
     *
     * @param size what the size is called
     * @return a body whose readings all come from this table
     * @throws SizeTableException when there is no such size
     */
    public Body body(String size) {
        SizeRow row = row(size);
        return new Body(
                name + " " + row.size(),
                columns.stream()
                        .map(measure -> Reading.of(
                                measure, row.mm().get(measure), Origin.TABLE, notes.getOrDefault(measure, "")))
                        .toList());
    }

    /**
     * The steps from each size to the next: how the table grades.
     *
     * @param measure a column
     * @return mm, one fewer than there are sizes
     * @throws SizeTableException when there is no such column
     */
    public List<Double> gradeSteps(Measure measure) {
        return IntStream.range(1, rows.size())
                .mapToObj(i ->
                        mm(rows.get(i).size(), measure) - mm(rows.get(i - 1).size(), measure))
                .toList();
    }

    /**
     * This table with one more column, such as a height computed from the stated range.
     *
     * @param measure the measure, not yet a column
     * @param mmBySize its value for every size, mm
     * @param note how it was come by
     * @return the wider table
     * @throws SizeTableException when a size has no value
     */
    public SizeTable withColumn(Measure measure, Map<String, Double> mmBySize, String note) {
        List<Measure> wider = new ArrayList<>(columns);
        wider.add(measure);
        List<SizeRow> widerRows = rows.stream()
                .map(row -> {
                    Map<Measure, Double> mm = new EnumMap<>(Measure.class);
                    mm.putAll(row.mm());
                    if (mmBySize.containsKey(row.size())) {
                        mm.put(measure, mmBySize.get(row.size()));
                    }
                    return new SizeRow(row.size(), mm);
                })
                .toList();
        Map<Measure, String> widerNotes = new EnumMap<>(Measure.class);
        widerNotes.putAll(notes);
        widerNotes.put(measure, note);
        return new SizeTable(name, source, wider, widerRows, figure, widerNotes);
    }
}
