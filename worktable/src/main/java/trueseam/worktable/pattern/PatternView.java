package trueseam.worktable.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trueseam.drafting.garment.Garment;
import trueseam.drafting.garment.SmallPieces;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Piece;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;
import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/**
 * What the Pattern screen shows.
 *
 * @param part what was chosen
 * @param taken the pattern, or why there is none
 * @param problem what is wrong with a file that was just brought, else empty
 * @param garments what can be drafted
 * @param small the small pieces that go with what is chosen
 * @param tables the size tables
 * @param sizes the sizes of the chosen table
 * @param flat the flat measures of a paper pattern
 * @param grid the size table beside the person
 * @param between which size is taken between two
 * @param drawing the drawing that is being confirmed
 */
public record PatternView(
        PatternPart part,
        Outcome<Taken> taken,
        String problem,
        List<Garment> garments,
        List<SmallPieces> small,
        List<String> tables,
        List<String> sizes,
        List<Flat> flat,
        Optional<Grid> grid,
        QuestionRow between,
        DrawingView drawing) {

    /**
     * A flat measure of a paper pattern.
     *
     * @param term the measure's standard term
     * @param label the workroom's word
     * @param text what was typed
     * @param problem what is wrong with it, else empty
     */
    public record Flat(String term, String label, String text, String problem) {}

    /**
     * The size table beside the person.
     *
     * @param name what it is called
     * @param source who published it
     * @param columns its measures
     * @param rows its sizes
     * @param person what the person has in each column, empty where it was not measured
     */
    public record Grid(String name, String source, List<String> columns, List<GridRow> rows, List<String> person) {}

    /**
     * One size.
     *
     * @param size its label
     * @param cells its measures
     * @param taken whether the pattern is taken in it
     */
    public record GridRow(String size, List<String> cells, boolean taken) {}

    /**
     * Looks at a project.
     *
     * @param workings what comes of it
     * @param problem what is wrong with a file that was just brought, else empty
     * @return the view
     */
    static PatternView of(Workings workings, String problem) {
        return of(workings, problem, "");
    }

    /**
     * Looks at a project.
     *
     * @param workings what comes of it
     * @param problem what is wrong with a file that was just brought, else empty
     * @param correction what is wrong with a correction that was just made, else empty
     * @return the view
     */
    static PatternView of(Workings workings, String problem, String correction) {
        PatternPart part = workings.project().pattern();
        Outcome<Taken> taken = workings.taken();
        Optional<Garment> garment = Arrays.stream(Garment.values())
                .filter(g -> g.name().equals(part.garment()))
                .findFirst();
        Optional<SizeTable> table = taken.value().flatMap(Taken::table).or(() -> table(part));
        return new PatternView(
                part,
                taken,
                problem,
                List.of(Garment.values()),
                Arrays.stream(SmallPieces.values())
                        .filter(small ->
                                garment.filter(g -> small.goesWith(g.kind())).isPresent())
                        .toList(),
                SizeTables.builtIn().stream().map(SizeTable::name).toList(),
                table.map(t -> t.rows().stream().map(SizeRow::size).toList()).orElse(List.of()),
                garment.map(g -> flat(g, part, workings)).orElse(List.of()),
                table.map(t -> grid(t, taken, workings)),
                QuestionRow.betweenSizes(workings.project()),
                DrawingView.of(workings, correction));
    }

    private static Optional<SizeTable> table(PatternPart part) {
        boolean drafts = part.way().equals("draft") && !part.table().equals("own");
        String name = part.table().isEmpty() && drafts ? "misses" : part.table();
        return SizeTables.builtIn().stream().filter(t -> t.name().equals(name)).findFirst();
    }

    private static List<Flat> flat(Garment garment, PatternPart part, Workings workings) {
        List<Flat> fields = new ArrayList<>();
        for (Measure measure : Coverage.measuresOf(garment.kind())) {
            String text = part.flat().getOrDefault(measure.term(), "");
            fields.add(new Flat(measure.term(), measure.workroomLabel(), text, wrong(text, workings)));
        }
        return fields;
    }

    private static String wrong(String text, Workings workings) {
        if (text.isBlank()) {
            return "";
        }
        try {
            double mm =
                    Length.parse(text, workings.project().person().bareUnit()).mm();
            return mm > 0 ? "" : "Give what the tape reads on the paper, a length above zero.";
        } catch (LengthTextException e) {
            return e.getMessage();
        }
    }

    private static Grid grid(SizeTable table, Outcome<Taken> taken, Workings workings) {
        LengthFormat show = workings.project().person().format();
        String size = taken.value().flatMap(Taken::row).map(SizeRow::size).orElse("");
        List<GridRow> rows = new ArrayList<>();
        for (SizeRow row : table.rows()) {
            rows.add(new GridRow(
                    row.size(),
                    table.columns().stream()
                            .map(m -> show.number(row.mm().get(m)))
                            .toList(),
                    row.size().equals(size)));
        }
        return new Grid(
                table.name(),
                table.source(),
                table.columns().stream().map(Measure::workroomLabel).toList(),
                rows,
                table.columns().stream()
                        .map(m -> workings.body()
                                .body()
                                .value(m)
                                .map(v -> show.number(v.mm()))
                                .orElse(""))
                        .toList());
    }

    /**
     * Why this size.
     *
     * @return the choice by the frame, if it can be made
     */
    public Optional<SizeChoice> choice() {
        return taken.value().flatMap(Taken::choice);
    }

    /**
     * Whether it comes out of a file.
     *
     * @return true for pattern files and drawings
     */
    public boolean ofFile() {
        return part.way().equals("file") || part.way().equals("drawing");
    }

    /**
     * The pieces.
     *
     * @return the pattern's pieces, if there is one
     */
    public List<Piece> pieces() {
        return taken.value().map(t -> t.pattern().pieces()).orElse(List.of());
    }
}
