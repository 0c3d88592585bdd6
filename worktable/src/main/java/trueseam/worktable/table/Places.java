package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;

/**
 * Where the pieces lie on the table: side by side, lower ends level, in the order of the pattern. Where they lie follows from the original
 * pieces alone, so that nothing jumps when one is altered; what they take up, from both.
 *
 * @param places by the name of the piece
 * @param area what original and altered pieces take up, mm, y downwards
 */
record Places(Map<String, At> places, Bounds area) {

    /** Room for what a drag adds on either side, mm. */
    private static final double APART_MM = 125;

    /** Wider than this a row is not begun longer: with small pieces two rows are larger on the screen than one. */
    private static final double WIDEST_ROW_MM = 1800;

    private static final double MARGIN_MM = 40;

    /** By how much a piece's own coordinates are shifted, y downwards. */
    record At(double x, double y) {}

    static Places of(List<Piece> pieces, List<Piece> altered) {
        Map<String, At> places = new LinkedHashMap<>();
        double top = 0;
        for (List<Piece> row : rows(pieces)) {
            double tallest =
                    row.stream().mapToDouble(p -> bounds(p).height()).max().orElse(0);
            double left = 0;
            for (Piece piece : row) {
                Bounds bounds = bounds(piece);
                places.put(piece.name(), new At(left - bounds.minX(), top + tallest + bounds.minY()));
                left += bounds.width() + APART_MM;
            }
            top += tallest + APART_MM;
        }
        Bounds area = new Bounds(0, 0, 1, 1);
        for (Piece piece : pieces) {
            area = area.with(lying(piece, places.get(piece.name())));
        }
        for (Piece piece : altered) {
            area = area.with(lying(piece, places.get(piece.name())));
        }
        return new Places(places, area.grown(MARGIN_MM));
    }

    private static Bounds lying(Piece piece, At at) {
        Bounds b = bounds(piece);
        return new Bounds(b.minX() + at.x(), at.y() - b.maxY(), b.maxX() + at.x(), at.y() - b.minY());
    }

    private static List<List<Piece>> rows(List<Piece> pieces) {
        List<List<Piece>> rows = new ArrayList<>();
        double used = Double.POSITIVE_INFINITY;
        for (Piece piece : pieces) {
            double wide = bounds(piece).width() + APART_MM;
            if (used + wide > WIDEST_ROW_MM) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(piece);
            used += wide;
        }
        return rows;
    }

    private static Bounds bounds(Piece piece) {
        return piece.outline().bounds();
    }
}
