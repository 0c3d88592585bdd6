package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Typeface;
import trueseam.output.print.TestSquares;

/**
 * The words and test squares that page one begins with.
 *
 * @param title what the strips are for
 * @param schematic whether there is no digital pattern to take strips from
 * @param strips the strips
 * @param uncut the pieces whose outline crosses itself
 * @param opened the pieces that are cut open inside
 * @param failures the proofs that do not hold, each a sentence
 */
record StripCover(
        String title,
        boolean schematic,
        List<Cutting.Strip> strips,
        List<String> uncut,
        List<String> opened,
        List<String> failures) {

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
        } else if (strips.isEmpty() && uncut.isEmpty()) {
            words.add("Nothing changes at any cutting line: there is nothing to tape on and nothing to cut away.");
        } else if (!strips.isEmpty()) {
            words.addAll(howTo());
        }
        for (String piece : uncut) {
            words.add("No strips for the " + piece + ": its outline crosses itself, so it has no cutting line.");
        }
        for (String piece : opened) {
            words.add("The " + piece
                    + " is cut open and spread inside. Its strips give the new outline only; its darts and"
                    + " marks move too. Work it by the step sheet, or cut it from the full-size print.");
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

    private List<String> howTo() {
        List<String> words = new ArrayList<>();
        words.add(
                "Cut each strip out along its solid outline. It bears a number in a ring and, beside it, where it goes."
                        + " Work piece by piece in the order of the numbers: first along the lines across the piece, then at its"
                        + " edges. Strips are made to the cutting line of the tissue.");
        if (any(StripKind.INSERT)) {
            words.add(
                    "Insert: cut the tissue apart along its line, and tape its two cut edges to the dashed lines; 10 mm of"
                            + " the strip lie under the tissue on either side.");
        }
        if (any(StripKind.FOLD_OUT)) {
            words.add(
                    "Fold out: lay the upper dashed line on the line of the tissue, fold the tissue where the middle line"
                            + " is, and bring the lower dashed line up to the upper. Fold all across the piece, then tape.");
        }
        if (any(StripKind.TAPE_ON)) {
            words.add("Tape on: lay the dashed line on the edge of the tissue; 10 mm beyond it lie under the tissue.");
        }
        if (any(StripKind.CUT_AWAY)) {
            words.add(
                    "Fold or cut away: lay the dashed line on the edge of the tissue, the hatched part on the tissue. What"
                            + " is hatched goes; the far side of the hatching is the new cutting line.");
        }
        if (strips.stream().anyMatch(s -> !s.sliver().joins().isEmpty())) {
            words.add("Parts with the same join number are put together there first, edge to edge.");
        }
        words.add(
                "Strips change the outline only. Darts, notches and lines inside a piece may have moved too: take them"
                        + " from the step sheet or the full-size print.");
        return words;
    }

    private boolean any(StripKind kind) {
        return strips.stream().anyMatch(s -> s.sliver().kind() == kind);
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
