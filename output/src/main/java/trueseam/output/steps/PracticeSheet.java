package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Align;
import trueseam.output.drawing.Dash;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PdfBook;
import trueseam.output.drawing.Pen;
import trueseam.output.sheet.SheetFlow;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.sheet.SheetTable;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;

/**
 * The alterations of a fit for practice in quarter scale: every piece as it was bought, with the places of pins, hinges and marks, a
 * ruler and a test square in the same scale, and what to work out. On the teacher's copy the figures and the finished lines are in.
 * Truing is left out: it is done by eye on what was drawn. Source of practising in quarter scale: Problems in Pattern Fitting, Michigan State
 * University, 1959.
 */
public final class PracticeSheet {

    /** Quarter scale. */
    public static final double SCALE = 0.25;

    private static final String FOOT =
            "Quarter scale, for practice: nothing to cut a garment from. Lengths in the words are life-size; measure them with the ruler of page"
                    + " one.";

    private static final Lettering TITLE = Lettering.of(6).heavy();
    private static final Lettering PIECE = Lettering.of(4.4).heavy();
    private static final Lettering TEXT = Lettering.of(3);
    private static final Pen JOIN = Pen.of(0.15).gray(0.4).with(Dash.DOTTED);
    private static final double GAP_MM = 8;

    /** Narrower columns of words are hard to read. */
    private static final double LEAST_COLUMN_MM = 55;

    private final FitResult fit;
    private final LengthFormat show;
    private final SheetFlow flow;
    private final boolean worked;

    private PracticeSheet(FitResult fit, SheetFlow flow, boolean worked) {
        this.fit = fit;
        this.show = fit.choices().show();
        this.flow = flow;
        this.worked = worked;
    }

    /**
     * The copy with the working shown.
     *
     * @param fit the fit
     * @param paper what it is printed on
     * @return a PDF
     */
    public static byte[] forTeacher(FitResult fit, SheetPaper paper) {
        return drawn(fit, paper, "Practice in quarter scale: the teacher's copy, worked", true);
    }

    /**
     * The copy to work on.
     *
     * @param fit the fit
     * @param paper what it is printed on
     * @param student which student's it is, from 1
     * @param students of how many
     * @return a PDF
     */
    public static byte[] forStudent(FitResult fit, SheetPaper paper, int student, int students) {
        return drawn(fit, paper, "Practice in quarter scale: student " + student + " of " + students, false);
    }

    private static byte[] drawn(FitResult fit, SheetPaper paper, String head, boolean worked) {
        PdfBook book = PdfBook.titled(head, "Alterations to do by hand in quarter scale");
        PracticeSheet sheet = new PracticeSheet(fit, SheetFlow.upright(book, paper, head, FOOT), worked);
        sheet.opening();
        for (Chapter chapter : fit.worked().chapters()) {
            if (!chapter.truing()) {
                sheet.chapter(chapter);
            }
        }
        return sheet.flow.finished();
    }

    private void opening() {
        Pattern pattern = fit.worked().original();
        flow.paragraph(worked ? "Practice, worked" : "Practice", TITLE, 1);
        flow.paragraph(
                MeasureWords.capital(pattern.name()) + (pattern.size().isBlank() ? "" : ", size " + pattern.size())
                        + ", for " + fit.body().label() + "."
                        + (worked ? "" : "  Name: ______________________________"),
                TEXT,
                3);
        QuarterRuler.draw(flow);
        flow.paragraph(
                "1. Work out what is needed: need = body + ease - pattern, and share it over the cut edges. 2. On each piece put the"
                        + " pin where the ring with a dot is, measure marks from the small crosses (the numbers are those of the steps), and"
                        + " turn, shift and trace as the steps say, on tissue. 3. True the lines: corners as they were, seams of one length.",
                TEXT,
                2);
        table();
    }

    private void table() {
        List<List<SheetTable.Cell>> rows = new ArrayList<>();
        for (Need need : fit.needs()) {
            Optional<Change> change = fit.changes().stream()
                    .filter(one -> one.measure() == need.measure())
                    .findFirst();
            if (need.decision().isAltered() && change.isPresent()) {
                rows.add(row(need, change.get()));
            }
        }
        if (rows.isEmpty()) {
            flow.paragraph("No measure is altered, so there is nothing to work out.", TEXT.heavy(), 2);
            return;
        }
        new SheetTable(
                        flow,
                        List.of(
                                new SheetTable.Column("Measure", 34, Align.LEFT),
                                new SheetTable.Column("Body", 18, Align.RIGHT),
                                new SheetTable.Column("Ease", 18, Align.RIGHT),
                                new SheetTable.Column("Pattern", 18, Align.RIGHT),
                                new SheetTable.Column("Need", 20, Align.RIGHT),
                                new SheetTable.Column("Cut edges", 12, Align.RIGHT),
                                new SheetTable.Column("At each edge", 22, Align.RIGHT)),
                        flow.width())
                .set(rows);
        flow.down(4);
    }

    private List<SheetTable.Cell> row(Need need, Change change) {
        RulerLength ruler = new RulerLength(show);
        boolean flat = need.flatMm().isPresent();
        OptionalDouble pattern = flat ? need.flatMm() : need.tableMm();
        return List.of(
                SheetTable.Cell.of(MeasureWords.label(need.measure())),
                SheetTable.Cell.of(show.show(need.body().mm())),
                flat ? SheetTable.Cell.of(show.show(need.easeMm())) : SheetTable.Cell.of("0", "the table has it"),
                SheetTable.Cell.of(
                        pattern.isPresent() ? show.show(pattern.getAsDouble()) : "", flat ? "measured" : "size table"),
                asked(show.showSigned(need.needMm())),
                SheetTable.Cell.of(String.valueOf(change.edges())),
                asked(ruler.showSigned(change.perEdgeMm())));
    }

    private SheetTable.Cell asked(String figure) {
        return worked ? SheetTable.Cell.of(figure).heavier() : SheetTable.Cell.of("__________");
    }

    private void chapter(Chapter chapter) {
        List<StepCell> cells = StepCell.of(chapter, show, Integer.MAX_VALUE);
        PracticePiece piece = new PracticePiece(chapter, cells, worked);
        Bounds area = piece.area();
        double wide = area.width() * SCALE;
        double high = area.height() * SCALE;
        if (wide > flow.width()) {
            throw new PracticeTooWideException(chapter.before().name(), wide, flow.width());
        }
        List<String> words =
                cells.stream().flatMap(cell -> cell.caption().stream()).toList();
        double column = flow.width() - wide - GAP_MM;
        double wordsMm = column < LEAST_COLUMN_MM ? Double.MAX_VALUE : highOf(words, column);
        boolean beside = wordsMm <= flow.roomOfAPage() - 9;
        flow.need(Math.min(flow.roomOfAPage(), 9 + (beside ? Math.max(high, wordsMm) : high)));
        flow.page()
                .text(
                        MeasureWords.capital(chapter.before().name()) + ": " + chapter.title(),
                        new Point(flow.left(), flow.y() - 4.4),
                        PIECE);
        flow.down(8);
        if (beside) {
            words(words, new Point(flow.left() + wide + GAP_MM, flow.y()), column);
        }
        double drawn = piece(piece, area, wide, high);
        flow.down(beside ? Math.max(0, wordsMm - drawn) + 4 : 4);
        if (!beside) {
            words.forEach(line -> flow.paragraph(line, TEXT, 1));
        }
    }

    /** A piece that is higher than the page goes on on the next, joined at a dotted line. Says what it took of the last page. */
    private double piece(PracticePiece piece, Bounds area, double wide, double high) {
        double left = high;
        double done = 0;
        while (left > 0) {
            double part = Math.min(left, flow.room());
            Bounds room = new Bounds(flow.left(), flow.y() - part, flow.left() + wide, flow.y());
            Point origin = new Point(flow.left() - SCALE * area.minX(), flow.y() + done - SCALE * area.maxY());
            flow.page().within(room.grown(0.4), clipped -> piece.draw(clipped.view(SCALE, origin)));
            flow.down(part);
            done += part;
            left -= part;
            if (left > 0) {
                join(0.8);
                flow.turnPage();
                join(-3);
            } else {
                return part;
            }
        }
        return 0;
    }

    private void join(double wordsUpMm) {
        double right = flow.left() + flow.width();
        flow.page().line(new Point(flow.left(), flow.y()), new Point(right, flow.y()), JOIN);
        flow.page()
                .text(
                        "join here",
                        new Point(right, flow.y() + wordsUpMm),
                        Lettering.of(2.2).endingThere());
    }

    private double highOf(List<String> lines, double wide) {
        return lines.stream()
                .mapToDouble(line -> flow.typeface().wrapped(line, TEXT, wide).size() * TEXT.lineMm() + 1)
                .sum();
    }

    private void words(List<String> lines, Point topLeft, double wide) {
        double y = topLeft.y();
        for (String line : lines) {
            y -= flow.page().paragraph(line, new Point(topLeft.x(), y), wide, TEXT) + 1;
        }
    }
}
