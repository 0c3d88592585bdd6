package trueseam.output.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Where everything lies: pieces on the large sheet, and pages as windows of it.
 *
 * @param pieces where each piece lies
 * @param tiles the pages that show any of a piece, row by row
 * @param joined whether pages are put together
 * @param cover where page one's words stand, if they share a sheet with pieces; if not, they have page one to themselves
 */
public record Layout(List<Placed> pieces, List<Tile> tiles, boolean joined, Optional<Bounds> cover) {

    /** How far a mark with its number reaches, mm. */
    private static final double MARK_MM = 8;

    // Immutable.
    public Layout {
        pieces = List.copyOf(pieces);
        tiles = List.copyOf(tiles);
    }

    /**
     * How many pages the file has.
     *
     * @return pages of pieces, and page one if it stands alone
     */
    public int pages() {
        return tiles.size() + (cover.isPresent() ? 0 : 1);
    }

    /**
     * The marks where pages meet: two on each line between neighbours that are both printed.
     *
     * @return in the order of the pages; empty if pages are not put together
     */
    public List<JoinMark> marks() {
        if (!joined) {
            return List.of();
        }
        Map<List<Integer>, Tile> at = new HashMap<>();
        for (Tile tile : tiles) {
            at.put(List.of(tile.row(), tile.column()), tile);
        }
        List<JoinMark> marks = new ArrayList<>();
        int number = 0;
        for (Tile tile : tiles) {
            Tile right = at.get(List.of(tile.row(), tile.column() + 1));
            if (right != null) {
                number++;
                double x = tile.cell().maxX();
                marks.add(new JoinMark(number + "a", new Point(x, share(tile.frame(), 0.8, false)), true));
                marks.add(new JoinMark(number + "b", new Point(x, share(tile.frame(), 0.2, false)), true));
            }
            Tile below = at.get(List.of(tile.row() + 1, tile.column()));
            if (below != null) {
                number++;
                double y = tile.cell().minY();
                marks.add(new JoinMark(number + "a", new Point(share(tile.frame(), 0.2, true), y), false));
                marks.add(new JoinMark(number + "b", new Point(share(tile.frame(), 0.8, true), y), false));
            }
        }
        return marks;
    }

    /**
     * Where pages meet on a piece: the borders of what two pages both show.
     *
     * @param placed a piece of this layout
     * @return straight lines in the piece's own coordinates, across the piece; empty if pages are not put together
     */
    List<Path> joinsOn(Placed placed) {
        List<Path> joins = new ArrayList<>();
        Set<Double> upright = new TreeSet<>();
        Set<Double> level = new TreeSet<>();
        for (Tile tile : joined ? tiles : List.<Tile>of()) {
            upright.add(tile.frame().minX());
            upright.add(tile.frame().maxX());
            level.add(tile.frame().minY());
            level.add(tile.frame().maxY());
        }
        Bounds area = placed.area();
        Vec back = Point.ORIGIN.minus(placed.origin());
        for (double x : upright) {
            if (area.minX() < x && x < area.maxX()) {
                joins.add(Path.through(new Point(x, area.minY()).plus(back), new Point(x, area.maxY()).plus(back)));
            }
        }
        for (double y : level) {
            if (area.minY() < y && y < area.maxY()) {
                joins.add(Path.through(new Point(area.minX(), y).plus(back), new Point(area.maxX(), y).plus(back)));
            }
        }
        return joins;
    }

    /**
     * What the marks where pages meet cover of a piece.
     *
     * @param placed a piece of this layout
     * @return boxes in the piece's own coordinates
     */
    List<Bounds> marksOn(Placed placed) {
        Vec back = Point.ORIGIN.minus(placed.origin());
        List<Bounds> boxes = new ArrayList<>();
        for (JoinMark mark : marks()) {
            Point at = mark.at().plus(back);
            Bounds box = Bounds.of(at, at).grown(MARK_MM);
            if (placed.area().grown(MARK_MM).meets(Bounds.of(mark.at(), mark.at()), 0)) {
                boxes.add(box);
            }
        }
        return boxes;
    }

    private static double share(Bounds frame, double share, boolean across) {
        return across ? frame.minX() + share * frame.width() : frame.minY() + share * frame.height();
    }
}
