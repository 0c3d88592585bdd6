package trueseam.output.print;

import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;

/** A small picture of how the pages go together, with the pieces on them. */
final class PageMap {

    private static final Pen PAGE = Pen.of(0.18).gray(0.4);
    private static final Pen PIECE = Pen.of(0.3);

    private final List<PieceLines> pieces;
    private final Layout layout;

    PageMap(List<PieceLines> pieces, Layout layout) {
        this.pieces = pieces;
        this.layout = layout;
    }

    void draw(Canvas canvas, Bounds room) {
        Bounds all = layout.tiles().get(0).cell();
        for (Tile tile : layout.tiles()) {
            all = all.with(tile.cell());
        }
        Canvas map = canvas.fitting(all, room.grown(-1));
        for (Tile tile : layout.tiles()) {
            map.stroke(Shapes.rectangle(tile.cell()), PAGE);
        }
        for (Placed placed : layout.pieces()) {
            Path outline = outline(placed);
            map.fill(List.of(outline), 0.9);
            map.stroke(outline, PIECE);
        }
        // Pages once more, fainter, over the grey of the pieces; then words over all.
        for (Tile tile : layout.tiles()) {
            map.stroke(Shapes.rectangle(tile.cell()), PAGE);
        }
        for (Tile tile : layout.tiles()) {
            double size = Math.max(1.8, Math.min(5, tile.cell().height() * map.scale() * 0.2));
            Point at =
                    new Point(tile.cell().minX() + 1 / map.scale(), tile.cell().maxY() - size / map.scale());
            map.text(tile.label(), at, Lettering.of(size).heavy().shaded(0.3));
        }
        for (Placed placed : layout.pieces()) {
            Point middle = clearOfLabels(placed.area().centre());
            double width = placed.area().width() * map.scale() * 0.9;
            Lettering lettering = map.typeface().fitted(placed.piece(), Lettering.of(3), width, 1.4);
            map.text(placed.piece(), middle, lettering.centred());
        }
        layout.cover().ifPresent(cover -> map.stroke(Shapes.rectangle(cover), PAGE));
    }

    /** Names stand half way down a page, where no label is. */
    private Point clearOfLabels(Point p) {
        if (!layout.joined()) {
            return p;
        }
        for (Tile tile : layout.tiles()) {
            Bounds c = tile.cell();
            if (c.minX() <= p.x() && p.x() <= c.maxX() && c.minY() <= p.y() && p.y() <= c.maxY()) {
                return new Point(p.x(), c.centre().y() - 0.05 * c.height());
            }
        }
        return p;
    }

    private Path outline(Placed placed) {
        for (PieceLines piece : pieces) {
            if (piece.piece().name().equals(placed.piece())) {
                return Layouts.there(piece.outline(), placed);
            }
        }
        throw new IllegalArgumentException("the layout has a piece that the print has not: " + placed.piece());
    }
}
