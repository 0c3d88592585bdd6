package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;

/** Page one: what this is and for whom, the test squares, the cautions, the key to the lines, the pieces, the page map. */
final class CoverSheet {

    private static final Lettering BODY = Lettering.of(3.4);
    private static final Lettering HEAD = Lettering.of(4).heavy();
    private static final double COLUMN_MM = 68;
    private static final double GAP_MM = 7;

    private static final List<String> CAUTIONS = List.of(
            "Print at 100 %, actual size. Never \u201cfit to page\u201d.",
            "Measure both squares before cutting. If a side is not exactly 50 mm, or 2 in, print again.",
            "Cut and sew a trial garment first, before good cloth.",
            "Clothes for children: follow the safety rules of your country for cords, ties and small parts.");

    private final Pattern pattern;
    private final List<PieceLines> pieces;
    private final Layout layout;
    private final PrintOptions options;
    private final List<String> warnings;

    CoverSheet(Pattern pattern, List<PieceLines> pieces, Layout layout, PrintOptions options, List<String> warnings) {
        this.pattern = pattern;
        this.pieces = pieces;
        this.layout = layout;
        this.options = options;
        this.warnings = warnings;
    }

    void draw(Canvas canvas, Bounds room) {
        double y = drawTitle(canvas, room) - GAP_MM;
        y = drawWarnings(canvas, room, y);
        y = drawSquares(canvas, room, y) - GAP_MM;
        canvas.line(new Point(room.minX(), y), new Point(room.maxX(), y), Pens.FINE);
        y -= GAP_MM;
        double left = drawKey(canvas, room.minX(), y) - GAP_MM;
        drawPieces(canvas, room.minX(), left);
        double mapLeft = room.minX() + COLUMN_MM + GAP_MM;
        double words = drawAssembly(canvas, new Point(mapLeft, y), room.maxX() - mapLeft);
        Bounds map = new Bounds(mapLeft, room.minY(), room.maxX(), y - words - GAP_MM / 2);
        new PageMap(pieces, layout).draw(canvas, map);
    }

    private double drawTitle(Canvas canvas, Bounds room) {
        String name = Names.withSize(pattern);
        Lettering title = canvas.typeface().fitted(name, Lettering.of(9).heavy(), room.width(), 4);
        double y = room.maxY() - title.sizeMm();
        canvas.text(name, new Point(room.minX(), y), title);
        if (!options.label().isBlank()) {
            String label = "for " + options.label();
            y -= 8;
            canvas.text(
                    label,
                    new Point(room.minX(), y),
                    canvas.typeface().fitted(label, Lettering.of(6), room.width(), 3));
        }
        y -= 6.5;
        canvas.text(sheets(), new Point(room.minX(), y), Lettering.of(4));
        return y;
    }

    private String sheets() {
        int n = layout.tiles().size();
        String paper = options.paper() instanceof Paper.Roll
                ? (n == 1
                        ? options.paper().name()
                        : n + " sheets, each " + options.paper().name())
                : n + (n == 1 ? " sheet of " : " sheets of ") + options.paper().name();
        return "Full-size print: " + (layout.cover().isPresent() ? paper : "this page and " + paper);
    }

    /** What speaks against cutting: proofs that do not hold, and pieces that have no cutting line. */
    private List<String> against() {
        List<String> all = new ArrayList<>();
        for (PieceLines piece : pieces) {
            if (piece.crosses()) {
                all.add(piece.piece().name()
                        + ": the outline crosses itself, so it is printed without a cutting line.");
            }
        }
        all.addAll(warnings);
        return all;
    }

    private double drawWarnings(Canvas canvas, Bounds room, double top) {
        List<String> said = against();
        if (said.isEmpty()) {
            return top;
        }
        double y = top;
        double inner = room.width() - 6;
        y -= 3;
        y -= canvas.paragraph("Do not cut this yet.", new Point(room.minX() + 3, y), inner, HEAD);
        for (String warning : said.subList(0, Math.min(4, said.size()))) {
            y -= canvas.paragraph("\u2022 " + warning, new Point(room.minX() + 3, y), inner, BODY);
        }
        if (said.size() > 4) {
            y -= canvas.paragraph(
                    "\u2022 and " + (said.size() - 4) + " more, in the report",
                    new Point(room.minX() + 3, y),
                    inner,
                    BODY);
        }
        y -= 1;
        canvas.stroke(Shapes.rectangle(new Bounds(room.minX(), y, room.maxX(), top)), Pen.of(0.6));
        return y - GAP_MM;
    }

    private double drawSquares(Canvas canvas, Bounds room, double top) {
        Bounds squares = TestSquares.draw(canvas, new Point(room.minX() + 1, top));
        double left = squares.maxX() + GAP_MM;
        double y = top - canvas.paragraph("Before you cut", new Point(left, top), room.maxX() - left, HEAD) - 1;
        int n = 1;
        for (String caution : CAUTIONS) {
            canvas.text(n + ".", new Point(left, y - BODY.sizeMm()), BODY);
            y -= canvas.paragraph(caution, new Point(left + 5, y), room.maxX() - left - 5, BODY) + 1;
            n++;
        }
        return Math.min(y, squares.minY());
    }

    private double drawKey(Canvas canvas, double left, double top) {
        double y = top - canvas.paragraph("The lines", new Point(left, top), COLUMN_MM, HEAD) - 1;
        boolean before = pieces.stream().anyMatch(p -> p.before().isPresent());
        List<KeyRow> rows = new ArrayList<>();
        if (options.has(PrintedLine.CUTTING)) {
            rows.add(new KeyRow(Pens.CUTTING, before ? "cut here (altered)" : "cut here"));
        }
        if (options.has(PrintedLine.STITCHING)) {
            rows.add(
                    new KeyRow(Pens.STITCHING, before ? "stitch here (altered), dart legs" : "stitch here, dart legs"));
        }
        rows.add(new KeyRow(Pens.FOLD, "fold of the cloth, fold of a dart"));
        if (before && options.has(PrintedLine.CUTTING)) {
            rows.add(new KeyRow(Pens.BEFORE, "cutting line before altering"));
        }
        if (before && options.has(PrintedLine.STITCHING)) {
            rows.add(new KeyRow(Pens.BEFORE_STITCHING, "stitching line before altering"));
        }
        for (KeyRow row : rows) {
            y -= 5;
            canvas.line(new Point(left, y + 1.2), new Point(left + 18, y + 1.2), row.pen());
            canvas.text(
                    row.words(),
                    new Point(left + 21, y),
                    canvas.typeface().fitted(row.words(), BODY, COLUMN_MM - 21, 2));
        }
        return y;
    }

    private record KeyRow(Pen pen, String words) {}

    private void drawPieces(Canvas canvas, double left, double top) {
        double y = top - canvas.paragraph("The pieces", new Point(left, top), COLUMN_MM, HEAD) - 1;
        for (PieceLines piece : pieces) {
            String words = piece.piece().name() + ": "
                    + (piece.crosses() ? PieceTitle.CROSSES : PieceTitle.cutWords(piece.piece()));
            y -= canvas.paragraph(words, new Point(left, y), COLUMN_MM, BODY) + 0.8;
        }
    }

    private double drawAssembly(Canvas canvas, Point topLeft, double width) {
        double y = topLeft.y() - canvas.paragraph("The sheets", topLeft, width, HEAD) - 1;
        String words = layout.joined()
                ? "Each sheet is named by row and column. On every sheet that has a neighbour to the left or above, cut off"
                        + " the margin there along the broken line, through the diamonds. Lay it over that neighbour so"
                        + " that diamonds of the same number fall together, and tape. Sheets that would be empty are left out."
                : "Nothing has to be put together: every piece lies on one sheet.";
        y -= canvas.paragraph(words, new Point(topLeft.x(), y), width, BODY);
        return topLeft.y() - y;
    }
}
