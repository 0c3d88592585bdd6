package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Layer;

/** Draws one piece at full size, in its own coordinates: lines first, then marks, then words where they find room. */
final class PieceDrawing {

    private final PieceLines lines;
    private final PrintLayers layers;
    private final FreeRoom room;

    PieceDrawing(PieceLines lines, PrintLayers layers, FreeRoom room) {
        this.room = room;
        this.lines = lines;
        this.layers = layers;
    }

    void draw(Canvas canvas, PieceTitle title, PrintOptions options) {
        lines.stitching().ifPresent(room::keep);
        lines.beforeStitching().forEach(room::keep);
        lines.beforeCutting().forEach(room::keep);
        dartsBefore().forEach(room::keep);
        PieceMarks marks = new PieceMarks(lines, room);
        canvas.on(layers.marks(), marks::drawLevels);
        canvas.on(layers.original(), this::drawBefore);
        // Of a piece that nothing was done to, the outline is the original; it is still the one to cut.
        canvas.on(layers.altered(), this::drawOutline);
        canvas.on(layers.marks(), marks::drawSymbols);
        canvas.on(layers.marks(), c -> title.draw(c, room, lines));
        canvas.on(layers.marks(), marks::drawNames);
        Layer notes = layers.allowance();
        canvas.on(notes, c -> new EdgeNotes(lines, options, room).draw(c));
    }

    private void drawBefore(Canvas canvas) {
        canvas.stroke(lines.beforeStitching(), Pens.BEFORE_STITCHING);
        canvas.on(layers.allowance(), c -> c.stroke(lines.beforeCutting(), Pens.BEFORE));
        canvas.stroke(dartsBefore(), Pens.BEFORE_STITCHING);
    }

    /** The legs of darts that are not where they were. */
    private List<Path> dartsBefore() {
        List<Path> legs = new ArrayList<>();
        lines.before().ifPresent(before -> {
            for (Dart dart : before.darts()) {
                if (!lines.piece().darts().contains(dart)) {
                    legs.addAll(PieceMarks.legs(before, dart));
                }
            }
        });
        return legs;
    }

    private void drawOutline(Canvas canvas) {
        Piece piece = lines.piece();
        if (lines.stitching().isPresent()) {
            for (Edge edge : piece.edges()) {
                canvas.stroke(edge.path(), isFold(edge) ? Pens.FOLD : Pens.STITCHING);
            }
        }
        canvas.on(layers.allowance(), c -> lines.cutting().ifPresent(cut -> drawCutting(c, cut)));
    }

    /** The cutting line leaves out the fold: there the cloth is whole. */
    private void drawCutting(Canvas canvas, Path cut) {
        Optional<Path> open =
                lines.piece().fold().map(f -> withoutFold(cut, lines.piece().edge(f)));
        canvas.stroke(open.orElse(cut), Pens.CUTTING);
    }

    private static Path withoutFold(Path cut, Edge fold) {
        if (fold.allowanceMm() > 0) {
            return cut;
        }
        Point a = fold.path().start();
        Point b = fold.path().end();
        double last = cut.nearest(a).alongMm();
        double first = cut.nearest(b).alongMm();
        // Mitres lie beyond the ends of the fold, on its line: from there on scissors cut.
        if (last < first) {
            return cut.part(first, cut.length()).then(cut.part(0, last));
        }
        return cut.part(first, last);
    }

    private boolean isFold(Edge edge) {
        return lines.piece().fold().filter(edge.name()::equals).isPresent();
    }
}
