package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PdfBook;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;
import trueseam.output.sheet.SheetFlow;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;

/**
 * The step sheet as a PDF: piece by piece the alterations in the order of work, then the truing; each step in words below a small
 * drawing.
 */
public final class StepSheet {

    private static final String CAUTIONS =
            "Before you cut: measure the test square of the full-size print, and sew a trial"
                    + " garment first. Children's clothing and flame safety: follow your local rules.";

    private static final Lettering TITLE = Lettering.of(6).heavy();
    private static final Lettering PIECE = Lettering.of(4.4).heavy();
    private static final Lettering CHAPTER = Lettering.of(3.3);
    private static final Lettering TEXT = Lettering.of(3);
    private static final Lettering CAPTION = Lettering.of(2.65);
    private static final Pen FRAME = Pen.of(0.12).gray(0.7);
    private static final double GAP_MM = 5;

    /** Heights of a picture for pieces that are not much higher than wide, and for others. */
    private static final double PICTURE_MM = 48;

    private static final double TALL_PICTURE_MM = 80;
    private static final double TALL = 2.1;

    private final FitResult fit;
    private final LengthFormat show;
    private final SheetFlow flow;
    private final int columns;

    private StepSheet(FitResult fit, SheetFlow flow, int columns) {
        this.columns = columns;
        this.fit = fit;
        this.show = fit.choices().show();
        this.flow = flow;
    }

    /**
     * Draws the step sheet of a fit.
     *
     * @param fit the fit
     * @param paper what it is printed on
     * @return a PDF
     */
    public static byte[] pdf(FitResult fit, SheetPaper paper) {
        Pattern pattern = fit.worked().original();
        String whom = pattern.name()
                + (pattern.size().isBlank() ? "" : ", size " + pattern.size()) + ", for "
                + fit.body().label();
        PdfBook book = PdfBook.titled("Step sheet: " + whom, "How each pattern piece is altered, step by step");
        // High pieces fill upright sheets better; low ones fit four abreast on lying ones.
        boolean upright = fit.worked().chapters().stream().anyMatch(chapter -> isTall(chapter.before()));
        String head = "Step sheet: " + whom;
        SheetFlow flow =
                upright ? SheetFlow.upright(book, paper, head, CAUTIONS) : SheetFlow.lying(book, paper, head, CAUTIONS);
        StepSheet sheet = new StepSheet(fit, flow, upright ? 3 : 4);
        sheet.opening(whom);
        sheet.chapters();
        return flow.finished();
    }

    private static boolean isTall(Piece piece) {
        Bounds area = piece.outline().bounds();
        return area.height() > TALL * area.width();
    }

    private void opening(String whom) {
        flow.paragraph("Step sheet", TITLE, 1);
        flow.paragraph(MeasureWords.capital(whom) + ".", TEXT, 2);
        if (fit.schematic()) {
            flow.paragraph(
                    "The drawings are schematic: your paper pattern is not in the computer, so the steps are shown on"
                            + " drafted pieces of the same kind. The amounts are yours.",
                    TEXT.heavy(),
                    2);
        }
        flow.paragraph(
                "Lay the pattern piece under or over a sheet of tissue, and work on the stitching lines. \"Out\" is away"
                        + " from the piece, \"up\" is towards the head, \"across\" and \"along\" are across and along the"
                        + " grainline. Amounts are those of one edge. Where the work on a piece has parts (1 of 2, 2 of 2), cut"
                        + " out what you have drawn and take it as the pattern of the next part.",
                TEXT,
                2);
        Legend.draw(flow);
        if (fit.worked().chapters().isEmpty()) {
            flow.paragraph("Nothing is altered, so there is nothing to do here.", TEXT.heavy(), 0);
        }
    }

    private void chapters() {
        for (Piece piece : fit.worked().original().pieces()) {
            of(piece, false, MeasureWords.capital(piece.name()));
        }
        for (Piece piece : fit.worked().original().pieces()) {
            of(piece, true, "Truing: " + piece.name());
        }
    }

    private void of(Piece piece, boolean truing, String heading) {
        List<Chapter> chapters = new ArrayList<>();
        for (Chapter chapter : fit.worked().chapters()) {
            if (chapter.before().name().equals(piece.name()) && chapter.truing() == truing) {
                chapters.add(chapter);
            }
        }
        for (int i = 0; i < chapters.size(); i++) {
            String above = chapters.size() == 1 ? heading : heading + " (" + (i + 1) + " of " + chapters.size() + ")";
            chapter(chapters.get(i), above);
        }
    }

    private void chapter(Chapter chapter, String heading) {
        double high = isTall(chapter.before()) ? TALL_PICTURE_MM : PICTURE_MM;
        int most = (int) (high / CellDrawing.DETAIL_HIGH_MM);
        List<StepCell> cells = StepCell.of(chapter, show, most);
        CellDrawing drawing = new CellDrawing(chapter.before(), chapter.steps(), cells, new RulerLength(show));
        for (int i = 0; i < cells.size(); i += columns) {
            List<StepCell> row = cells.subList(i, Math.min(i + columns, cells.size()));
            double captions = row.stream().mapToDouble(this::captionMm).max().orElse(0);
            double rowMm = high + captions + 3.5;
            boolean turned = flow.need(i == 0 ? rowMm + 9 : rowMm);
            if (i == 0 || turned) {
                heading(i == 0 ? heading : heading + ", continued", chapter.title());
            }
            row(row, drawing, high);
            flow.down(rowMm);
        }
    }

    private void heading(String heading, String title) {
        flow.down(1);
        flow.page().text(heading, new Point(flow.left(), flow.y() - 4.4), PIECE);
        double after = flow.typeface().widthOf(heading, PIECE) + 4;
        Lettering fitted = flow.typeface().fitted(title, CHAPTER, flow.width() - after, 2);
        flow.page().text(title, new Point(flow.left() + after, flow.y() - 4.4), fitted);
        flow.down(8);
    }

    private double columnMm() {
        return (flow.width() - (columns - 1) * GAP_MM) / columns;
    }

    private double captionMm(StepCell cell) {
        double mm = 0;
        for (String line : cell.caption()) {
            mm += flow.typeface().wrapped(line, CAPTION, columnMm()).size() * CAPTION.lineMm() + 0.8;
        }
        return mm;
    }

    private void row(List<StepCell> row, CellDrawing drawing, double high) {
        Canvas page = flow.page();
        for (int i = 0; i < row.size(); i++) {
            double x = flow.left() + i * (columnMm() + GAP_MM);
            Bounds room = new Bounds(x, flow.y() - high, x + columnMm(), flow.y());
            drawing.draw(page, room, row.get(i));
            page.stroke(Shapes.rectangle(room), FRAME);
            double y = room.minY() - 2;
            for (String line : row.get(i).caption()) {
                y -= page.paragraph(line, new Point(x, y), columnMm(), CAPTION) + 0.8;
            }
        }
    }
}
