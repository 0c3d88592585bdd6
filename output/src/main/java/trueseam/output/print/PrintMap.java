package trueseam.output.print;

import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;

/**
 * How the pages of a print go together, for showing it before it is printed: in mm on the large sheet, y up.
 *
 * @param cover the page that has page one's words to itself, placed beside the others; empty where they share a sheet with pieces
 * @param tiles the pages that show any of a piece
 * @param pieces the pieces where they lie
 * @param joined whether the pages are put together; if not, each piece lies on one of them
 */
public record PrintMap(List<Bounds> cover, List<Tile> tiles, List<Outline> pieces, boolean joined) {

    /**
     * A piece where it lies.
     *
     * @param piece its name
     * @param path the line that scissors follow
     */
    public record Outline(String piece, Path path) {}

    // Immutable.
    public PrintMap {
        cover = List.copyOf(cover);
        tiles = List.copyOf(tiles);
        pieces = List.copyOf(pieces);
    }

    /**
     * How many pages the file has.
     *
     * @return pages of pieces, and page one if it stands alone
     */
    public int pages() {
        return cover.size() + tiles.size();
    }

    /**
     * All of it.
     *
     * @return the room that pages and cover take
     */
    public Bounds all() {
        Bounds all = tiles.get(0).window();
        for (Tile tile : tiles) {
            all = all.with(tile.window());
        }
        for (Bounds page : cover) {
            all = all.with(page);
        }
        return all;
    }
}
