package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;

/** What is written on a piece: its name, how often it is cut, of which pattern and size, for whom. */
final class PieceTitle {

    /** Said of a piece that cannot be cut. */
    static final String CROSSES = "DO NOT CUT: the outline crosses itself, so there is no cutting line";

    private record Row(String text, Lettering lettering) {}

    private final List<Row> rows = new ArrayList<>();

    PieceTitle(Pattern pattern, PieceLines lines, PrintOptions options, boolean schematic) {
        Piece piece = lines.piece();
        rows.add(new Row(piece.name(), Lettering.of(11).heavy()));
        rows.add(new Row(cutWords(piece), Lettering.of(7).heavy()));
        rows.add(new Row(Names.withSize(pattern), Lettering.of(5)));
        if (!options.label().isBlank()) {
            rows.add(new Row("for " + options.label(), Lettering.of(5)));
        }
        if (schematic) {
            rows.add(new Row("drafted to show the steps: not your pattern", Lettering.of(4.2)));
        }
        if (lines.before().isPresent()) {
            rows.add(new Row("altered", Lettering.of(4.2)));
        }
        rows.add(new Row(allowanceWords(piece, lines), Lettering.of(4.2)));
    }

    static String cutWords(Piece piece) {
        return piece.fold().isPresent() ? "cut " + piece.cutCount() + " on the fold" : "cut " + piece.cutCount();
    }

    private static String allowanceWords(Piece piece, PieceLines lines) {
        if (lines.crosses()) {
            return CROSSES;
        }
        boolean none = piece.edges().stream().map(Edge::allowanceMm).allMatch(a -> a == 0);
        if (none) {
            return "no seam allowances included";
        }
        return lines.cutting().isPresent() ? "seam allowances included" : "stitching lines only: add allowances";
    }

    /** Sets it where there is room near the middle, smaller if there is little. */
    void draw(Canvas canvas, FreeRoom room, PieceLines lines) {
        Point near = lines.piece().outline().bounds().centre();
        for (double share = 1; share > 0.3; share -= 0.15) {
            double width = width(canvas, share);
            double height = height(share);
            Optional<Bounds> box = room.take(width + 6, height + 4, near);
            if (box.isPresent()) {
                set(canvas, new Point(box.get().minX() + 3, box.get().maxY() - 2), share);
                return;
            }
        }
        // A piece narrower than its name: the words stand beside the grainline and may cross its edge.
        set(canvas, near, 0.3);
    }

    private void set(Canvas canvas, Point topLeft, double share) {
        double y = topLeft.y();
        for (Row row : rows) {
            Lettering lettering = row.lettering().sized(row.lettering().sizeMm() * share);
            canvas.text(row.text(), new Point(topLeft.x(), y - lettering.sizeMm()), lettering);
            y -= lettering.lineMm();
        }
    }

    private double width(Canvas canvas, double share) {
        double widest = 0;
        for (Row row : rows) {
            widest = Math.max(widest, canvas.typeface().widthOf(row.text(), row.lettering()));
        }
        return widest * share;
    }

    private double height(double share) {
        double sum = 0;
        for (Row row : rows) {
            sum += row.lettering().lineMm();
        }
        return sum * share;
    }
}
