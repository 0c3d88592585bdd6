package trueseam.output.steps;

import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;
import trueseam.output.sheet.SheetFlow;

/** What the symbols of the step sheet mean: drawn once, on its first page. */
final class Legend {

    private static final Lettering WORDS = Lettering.of(2.6);
    private static final double ROW_MM = 6.2;
    private static final double SAMPLE_MM = 12;
    private static final int COLUMNS = 3;

    private interface Sample {
        void draw(Canvas page, Point left);
    }

    private record Entry(Sample sample, String words) {}

    private static final List<Entry> ENTRIES = List.of(
            new Entry((c, p) -> paper(c, p), "the pattern, where it lies now"),
            new Entry((c, p) -> line(c, p, TableSymbols.PATTERN_BEFORE), "where it lay before the movement"),
            new Entry((c, p) -> TableSymbols.pin(c, p.plus(new Vec(SAMPLE_MM / 2, 0))), "the pin"),
            new Entry((c, p) -> line(c, p, TableSymbols.KEPT), "traced where the pattern lay at first"),
            new Entry((c, p) -> line(c, p, TableSymbols.CARRIED), "traced after moving the pattern"),
            new Entry((c, p) -> line(c, p, TableSymbols.JOINED), "drawn new, to join"),
            new Entry(
                    (c, p) -> TableSymbols.mark(c, p.plus(new Vec(SAMPLE_MM / 2, 0)), false),
                    "a mark: its long line is to be met"),
            new Entry((c, p) -> notches(c, p), "notches: one stroke in front, two at the back"),
            new Entry(
                    (c, p) -> TableSymbols.arrow(c, p.plus(new Vec(1, 0)), p.plus(new Vec(SAMPLE_MM - 1, 0))),
                    "which way it moves, not how far"),
            new Entry((c, p) -> lens(c, p), "a place shown larger, by so much"));

    private Legend() {}

    static void draw(SheetFlow flow) {
        double column = flow.width() / COLUMNS;
        int rows = (ENTRIES.size() + COLUMNS - 1) / COLUMNS;
        for (int i = 0; i < ENTRIES.size(); i++) {
            double x = flow.left() + i % COLUMNS * column;
            int row = i / COLUMNS;
            double y = flow.y() - (row + 0.5) * ROW_MM;
            ENTRIES.get(i).sample().draw(flow.page(), new Point(x, y));
            flow.page().text(ENTRIES.get(i).words(), new Point(x + SAMPLE_MM + 2, y - 0.9), WORDS);
        }
        flow.down(rows * ROW_MM + 2);
    }

    private static void line(Canvas page, Point left, Pen pen) {
        page.line(left, left.plus(new Vec(SAMPLE_MM, 0)), pen);
    }

    private static void paper(Canvas page, Point left) {
        Path sheet = Shapes.closed(
                left.plus(new Vec(1, -1.8)),
                left.plus(new Vec(SAMPLE_MM - 1, -1.8)),
                left.plus(new Vec(SAMPLE_MM - 1, 1.8)),
                left.plus(new Vec(1, 1.8)));
        page.fill(List.of(sheet), TableSymbols.PAPER_GRAY);
        page.stroke(sheet, TableSymbols.PATTERN);
    }

    private static void notches(Canvas page, Point left) {
        line(page, left, TableSymbols.KEPT);
        TableSymbols.notch(page, left.plus(new Vec(SAMPLE_MM / 3, 0)), new Vec(0, 1), 1, 0);
        TableSymbols.notch(page, left.plus(new Vec(SAMPLE_MM * 2 / 3, 0)), new Vec(0, 1), 2, 0);
    }

    private static void lens(Canvas page, Point left) {
        Point middle = left.plus(new Vec(SAMPLE_MM / 2, 0));
        page.stroke(
                Shapes.circle(middle.plus(new Vec(2.2, 0)), 2.3), Pen.of(0.2).gray(0.35));
        page.stroke(Shapes.circle(middle.plus(new Vec(-4, 0)), 1), Pen.of(0.12).gray(0.45));
        page.line(
                middle.plus(new Vec(-3, 0)),
                middle.plus(new Vec(-0.1, 0)),
                Pen.of(0.12).gray(0.45));
    }
}
