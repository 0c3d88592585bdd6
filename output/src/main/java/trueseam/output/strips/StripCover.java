package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Dash;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Typeface;
import trueseam.output.print.TestSquares;

/**
 * The words and test squares that page one begins with.
 *
 * @param title what the strips are for
 * @param schematic whether there is no digital pattern to take strips from
 * @param strips the strips
 * @param failures the proofs that do not hold, each a sentence
 */
record StripCover(String title, boolean schematic, List<Cutting.Strip> strips, List<String> failures) {

    static final Pen CUT = Pen.of(0.4);
    static final Pen OLD = Pen.of(0.4).with(Dash.DASHED);
    static final Pen FINE = Pen.of(0.2);
    static final Pen AWAY = Pen.of(0.15).gray(0.5);

    private static final Lettering HEAD = Lettering.of(6).heavy();
    private static final Lettering BODY = Lettering.of(3.4);
    private static final double SQUARES_MM = 51;
    private static final int MOST_FAILURES = 4;

    private List<String> words() {
        List<String> words = new ArrayList<>();
        if (schematic) {
            words.add(
                    "There is no digital pattern of this tissue, so no strips can be printed to its lines. Work by the"
                            + " step sheet.");
        } else if (strips.isEmpty()) {
            words.add("Nothing changes at any cutting line: there is nothing to tape on and nothing to cut away.");
        } else {
            words.add(
                    "Cut each strip out along its solid outline. Lay its dashed line on the old cutting line of the tissue."
                            + " Tape on: the margin of 10 mm beyond the dashed line goes under the tissue. Fold or cut away: the"
                            + " hatched part shows what the tissue loses; its margin lies beyond the old cutting line.");
            words.add("Parts with the same join number are put together there first, edge to edge.");
            words.add("Strips change the outline only. Darts, notches and lines inside a piece may have moved too: take"
                    + " them from the step sheet or the full-size print.");
        }
        if (!failures.isEmpty()) {
            words.add("Do not cut this yet: not every proof holds.");
            words.addAll(failures.subList(0, Math.min(MOST_FAILURES, failures.size())));
            if (failures.size() > MOST_FAILURES) {
                words.add("There are " + (failures.size() - MOST_FAILURES) + " more; read the report.");
            }
        }
        words.add(
                "Print at 100 %, actual size. Measure both squares before cutting. If a side is not exactly 50 mm, or 2 in,"
                        + " print again.");
        words.add("Cut and sew a trial garment first, before good cloth.");
        words.add(
                "Clothes for children: follow the safety rules of your country for cords, ties and small parts, and for"
                        + " flame safety of nightwear.");
        return words;
    }

    double heightMm(Typeface typeface, double width) {
        double height = 2 * HEAD.lineMm() + SQUARES_MM + 10;
        for (String line : words()) {
            height += typeface.wrapped(line, BODY, width).size() * BODY.lineMm() + 1;
        }
        return height;
    }

    void draw(Canvas canvas, Point topLeft, double width) {
        double y = topLeft.y() - HEAD.sizeMm();
        canvas.text(title, new Point(topLeft.x(), y), canvas.typeface().fitted(title, HEAD, width, 3));
        y -= 6;
        Bounds squares = TestSquares.draw(canvas, new Point(topLeft.x() + 1, y));
        y = squares.minY() - 5;
        for (String line : words()) {
            y -= canvas.paragraph(line, new Point(topLeft.x(), y), width, BODY) + 1;
        }
    }
}
