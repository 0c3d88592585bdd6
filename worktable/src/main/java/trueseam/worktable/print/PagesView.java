package trueseam.worktable.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;
import trueseam.geometry.convert.Subpath;
import trueseam.output.drawing.PdfPages;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintMap;
import trueseam.output.print.Tile;
import trueseam.worktable.work.Outcome;

/**
 * The pages of a print on a map, and the one that is looked at.
 *
 * @param count how many
 * @param said how many, of what, in a sentence
 * @param shown which page is looked at, counted from 1
 * @param label what that page is called
 * @param viewBox the map's room
 * @param letterMm how large letters are on the map, mm
 * @param tiles the pages on the map
 * @param pieces the pieces on the map
 */
public record PagesView(
        int count,
        String said,
        int shown,
        String label,
        String viewBox,
        double letterMm,
        List<OnMap> tiles,
        List<Shape> pieces) {

    /**
     * A page on the map; x to the right and y down, mm.
     *
     * @param page its number in the file
     * @param label what it is called
     * @param x left
     * @param y top
     * @param width width
     * @param height height
     */
    public record OnMap(int page, String label, double x, double y, double width, double height) {}

    /**
     * A piece on the map.
     *
     * @param name its name
     * @param data its outline as path data, y up
     * @param x middle of its name
     * @param y middle of its name, down
     */
    public record Shape(String name, String data, double x, double y) {}

    /** The map is drawn in about this room, in pixels of the style sheet; letters on it are so large that they can be read. */
    private static final double MAP_WIDE_PX = 640;

    private static final double MAP_HIGH_PX = 500;
    private static final double LETTER_PX = 14;

    /** The pages of whole pieces. */
    static Outcome<PagesView> ofPieces(Outcome<FullSizePrint> print, PrintChoices choices, String page) {
        return print.isThere()
                ? Outcome.of(
                        pages(print.get().map(), choices.options().orElseThrow().paper(), page))
                : print.reason();
    }

    private static PagesView pages(PrintMap map, Paper paper, String page) {
        List<OnMap> tiles = new ArrayList<>();
        for (Bounds cover : map.cover()) {
            tiles.add(onMap(1, "test squares", cover));
        }
        for (Tile tile : map.tiles()) {
            boolean first = map.cover().isEmpty() && tile.page() == 1;
            String label = map.tiles().size() == 1
                    ? "all pieces"
                    : map.joined() ? "sheet " + tile.label() : "sheet " + (tile.column() + 1);
            tiles.add(onMap(tile.page(), first ? label + ", test squares" : label, tile.cell()));
        }
        Bounds all = map.all().grown(0.01 * map.all().width());
        int shown = shown(page, map.pages());
        return new PagesView(
                map.pages(),
                said(map, paper),
                shown,
                tiles.stream()
                        .filter(tile -> tile.page() == shown)
                        .map(OnMap::label)
                        .findFirst()
                        .orElse(""),
                viewBox(all),
                letterMm(all.width(), all.height()),
                tiles,
                map.pieces().stream().map(piece -> shape(piece, map.tiles())).toList());
    }

    private static String said(PrintMap map, Paper paper) {
        int n = map.tiles().size();
        String sheets = paper instanceof Paper.Roll
                ? (n == 1 ? paper.name() : n + " sheets, each " + paper.name())
                : n + (n == 1 ? " sheet of " : " sheets of ") + paper.name();
        long rows = map.tiles().stream().mapToInt(Tile::row).distinct().count();
        long columns = map.tiles().stream().mapToInt(Tile::column).distinct().count();
        String grid = !map.joined()
                ? ", nothing to put together"
                : ", put together in " + rows + (rows == 1 ? " row" : " rows") + " of up to " + columns;
        return map.cover().isEmpty()
                ? "One file: " + sheets + grid + "."
                : map.pages() + " pages: page 1 with the test squares, then " + sheets + grid + ".";
    }

    private static double letterMm(double wideMm, double highMm) {
        return LETTER_PX / Math.min(MAP_WIDE_PX / wideMm, MAP_HIGH_PX / highMm);
    }

    /** Names stand below the middle of a page, where no number is. */
    private static Shape shape(PrintMap.Outline outline, List<Tile> tiles) {
        Point middle = outline.path().bounds().centre();
        double y = tiles.stream()
                .map(Tile::cell)
                .filter(cell -> tiles.size() > 1 && cell.minY() <= middle.y() && middle.y() <= cell.maxY())
                .mapToDouble(cell -> cell.centre().y())
                .findFirst()
                .orElse(middle.y());
        return new Shape(outline.piece(), PathData.write(new Subpath(outline.path(), true)), middle.x(), -y);
    }

    private static OnMap onMap(int page, String label, Bounds at) {
        return new OnMap(page, label, at.minX(), -at.maxY(), at.width(), at.height());
    }

    private static String viewBox(Bounds all) {
        return PathData.number(all.minX()) + " " + PathData.number(-all.maxY()) + " " + PathData.number(all.width())
                + " " + PathData.number(all.height());
    }

    /** Strips come page by page, with nothing to put together but the tissue itself. */
    static Outcome<PagesView> ofStrips(Printing printing, String page) {
        Outcome<byte[]> pdf = printing.strips();
        if (!pdf.isThere()) {
            return pdf.reason();
        }
        int count = PdfPages.count(pdf.get());
        double width = printing.choices().sheets().widthMm();
        double height = printing.choices().sheets().heightMm();
        int columns = Math.min(4, count);
        List<OnMap> tiles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double left = i % columns * 1.1 * width;
            double top = Math.floorDiv(i, columns) * 1.1 * height;
            tiles.add(new OnMap(i + 1, i == 0 ? "test squares" : "strips", left, top, width, height));
        }
        double wide = (columns - 1) * 1.1 * width + width;
        double high = Math.floorDiv(count - 1, columns) * 1.1 * height + height;
        int shown = shown(page, count);
        String paper = printing.choices().paper().equals("letter") ? "US Letter" : "A4";
        return Outcome.of(new PagesView(
                count,
                count + (count == 1 ? " page of " : " pages of ") + paper + ", the first with the test squares.",
                shown,
                tiles.get(shown - 1).label(),
                viewBox(new Bounds(-2, -high - 2, wide + 2, 2)),
                letterMm(wide, high),
                tiles,
                List.of()));
    }

    private static int shown(String page, int count) {
        try {
            int asked = Integer.parseInt(page);
            return 1 <= asked && asked <= count ? asked : 1;
        } catch (NumberFormatException e) {
            return 1;
        }
    }

    /**
     * Which page is before the shown one.
     *
     * @return the page, if there is one
     */
    public Optional<Integer> before() {
        return shown > 1 ? Optional.of(shown - 1) : Optional.empty();
    }

    /**
     * Which page is after the shown one.
     *
     * @return the page, if there is one
     */
    public Optional<Integer> after() {
        return shown < count ? Optional.of(shown + 1) : Optional.empty();
    }

    /**
     * The names of the pieces, for those who do not see the map.
     *
     * @return in one line
     */
    public String pieceNames() {
        return pieces.stream().map(Shape::name).collect(Collectors.joining(", "));
    }
}
