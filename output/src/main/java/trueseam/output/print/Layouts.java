package trueseam.output.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.PdfBook;

/** Lays out pieces on paper. For one print and one thread. */
final class Layouts {

    /** Printers leave so much of the edge of the paper white at the most (common practice), mm. */
    static final double MARGIN_MM = 10;

    /** Room for the words of page one: what A4 and US Letter both have within their margins. */
    static final double COVER_WIDTH_MM = 190;

    static final double COVER_HEIGHT_MM = 259;

    private static final String COVER = "";
    private static final double BETWEEN_SHEETS_MM = 50;
    private static final int MOST_COLUMNS = 12;

    private final List<PieceLines> pieces;
    private final Paper paper;
    private final double overlap;

    Layouts(List<PieceLines> pieces, PrintOptions options) {
        this.pieces = pieces;
        this.paper = options.paper();
        this.overlap = options.overlapMm();
    }

    Layout layout() {
        double width = paper.widthMm() - 2 * MARGIN_MM;
        if (paper instanceof Paper.Sheet sheet) {
            double height = sheet.heightMm() - 2 * MARGIN_MM;
            boolean fits = boxes().stream().allMatch(b -> b.width() <= width && b.height() <= height);
            return sheet.tiled() || !fits ? tiled(width, height) : apart(width, height, sheet.heightMm());
        }
        for (Shelves.Box box : boxes()) {
            if (box.width() > width) {
                throw new PieceTooWideException(box.name(), box.width() + 2 * MARGIN_MM, paper.widthMm());
            }
        }
        return apart(width, PdfBook.LARGEST_MM - 2 * MARGIN_MM, 0);
    }

    private List<Shelves.Box> boxes() {
        List<Shelves.Box> boxes = new ArrayList<>();
        for (PieceLines piece : pieces) {
            Bounds b = piece.bounds();
            boxes.add(new Shelves.Box(piece.piece().name(), b.width(), b.height()));
        }
        return boxes;
    }

    /** Each sheet by itself; its words share the sheet that they fall on, which becomes page one. */
    private Layout apart(double width, double height, double paperHeight) {
        List<Shelves.Box> boxes = boxes();
        boxes.add(new Shelves.Box(COVER, COVER_WIDTH_MM, COVER_HEIGHT_MM));
        List<Shelves.Spot> spots = Shelves.pack(boxes, width, height);
        int first = 0;
        double[] used = new double[spots.size()];
        int sheets = 0;
        for (Shelves.Spot spot : spots) {
            used[spot.sheet()] =
                    Math.max(used[spot.sheet()], spot.down() + spot.box().height());
            sheets = Math.max(sheets, spot.sheet() + 1);
            first = spot.box().name().equals(COVER) ? spot.sheet() : first;
        }
        List<Placed> placed = new ArrayList<>();
        Bounds cover = null;
        for (Shelves.Spot spot : spots) {
            double left = order(spot.sheet(), first) * (width + BETWEEN_SHEETS_MM);
            if (spot.box().name().equals(COVER)) {
                double top = -spot.down();
                cover = new Bounds(
                        left + spot.right(), top - COVER_HEIGHT_MM, left + spot.right() + COVER_WIDTH_MM, top);
            } else {
                placed.add(place(spot, left, 0));
            }
        }
        List<Tile> tiles = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            int sheet = i == 0 ? first : i == first ? 0 : i;
            double left = i * (width + BETWEEN_SHEETS_MM);
            double down = paperHeight > 0 ? height : used[sheet];
            Bounds frame = new Bounds(left, -down, left + width, 0);
            tiles.add(new Tile(0, i, i + 1, frame.grown(MARGIN_MM), frame, frame));
        }
        return new Layout(inOrder(placed), tiles, false, Optional.ofNullable(cover));
    }

    /** The sheet with the words comes first; the one that was first takes its place. */
    private static int order(int sheet, int first) {
        return sheet == first ? 0 : sheet == 0 ? first : sheet;
    }

    private Placed place(Shelves.Spot spot, double left, double top) {
        Bounds b = lines(spot.box().name()).bounds();
        double x = left + spot.right();
        double y = top - spot.down();
        Point origin = new Point(x - b.minX(), y - b.maxY());
        return new Placed(spot.box().name(), origin, new Bounds(x, y - b.height(), x + b.width(), y));
    }

    private PieceLines lines(String name) {
        return pieces.stream()
                .filter(p -> p.piece().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private List<Placed> inOrder(List<Placed> placed) {
        List<Placed> sorted = new ArrayList<>();
        for (PieceLines piece : pieces) {
            for (Placed p : placed) {
                if (p.piece().equals(piece.piece().name())) {
                    sorted.add(p);
                }
            }
        }
        return sorted;
    }

    /** One large sheet cut into pages; of all widths the one that needs the fewest pages. */
    private Layout tiled(double width, double height) {
        Map<String, Footprint> footprints = new HashMap<>();
        for (PieceLines piece : pieces) {
            footprints.put(piece.piece().name(), new Footprint(piece.outlines()));
        }
        double step = width - overlap;
        double widest = boxes().stream().mapToDouble(Shelves.Box::width).max().orElseThrow();
        Layout best = null;
        double least = Double.MAX_VALUE;
        int columns = Math.max(1, (int) Math.ceil((widest - overlap) / step));
        for (int most = Math.max(columns, MOST_COLUMNS); columns <= most; columns++) {
            List<Shelves.Spot> spots = Shelves.pack(boxes(), columns * step + overlap, Double.MAX_VALUE);
            List<Placed> placed = new ArrayList<>();
            for (Shelves.Spot spot : spots) {
                placed.add(place(spot, 0, 0));
            }
            List<Tile> tiles = tiles(placed, footprints, width, height);
            // Of equal numbers the arrangement nearest to a square: it is easier to lay out on a table.
            double cost = tiles.size() + 0.01 * longSide(placed);
            if (cost < least) {
                least = cost;
                best = new Layout(inOrder(placed), tiles, true, Optional.empty());
            }
            if (spots.stream().allMatch(s -> s.down() == 0)) {
                break;
            }
        }
        return best;
    }

    /** The longer side of what is covered, m. */
    private static double longSide(List<Placed> placed) {
        Bounds all = placed.get(0).area();
        for (Placed p : placed) {
            all = all.with(p.area());
        }
        return Math.max(all.width(), all.height()) / 1000;
    }

    private List<Tile> tiles(List<Placed> placed, Map<String, Footprint> footprints, double width, double height) {
        double right = 0;
        double down = 0;
        for (Placed p : placed) {
            right = Math.max(right, p.area().maxX());
            down = Math.max(down, -p.area().minY());
        }
        int columns = Math.max(1, (int) Math.ceil((right - overlap) / (width - overlap)));
        int rows = Math.max(1, (int) Math.ceil((down - overlap) / (height - overlap)));
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double left = column * (width - overlap);
                double top = -row * (height - overlap);
                Bounds frame = new Bounds(left, top - height, left + width, top);
                Bounds cell = new Bounds(
                        column == 0 ? left : left + overlap / 2,
                        row == rows - 1 ? frame.minY() : frame.minY() + overlap / 2,
                        column == columns - 1 ? frame.maxX() : frame.maxX() - overlap / 2,
                        row == 0 ? top : top - overlap / 2);
                if (shows(cell, placed, footprints)) {
                    tiles.add(new Tile(row, column, tiles.size() + 2, frame.grown(MARGIN_MM), frame, cell));
                }
            }
        }
        return tiles;
    }

    /** Whether any of a piece lies in a cell; notches stand out farther than the overlap shows only if that is narrow. */
    private boolean shows(Bounds cell, List<Placed> placed, Map<String, Footprint> footprints) {
        double out = Math.max(0.5, PieceLines.STANDING_OUT_MM - overlap / 2);
        for (Placed p : placed) {
            Vec back = Point.ORIGIN.minus(p.origin());
            Bounds there = new Bounds(
                            cell.minX() + back.x(), cell.minY() + back.y(),
                            cell.maxX() + back.x(), cell.maxY() + back.y())
                    .grown(out);
            if (footprints.get(p.piece()).meets(there)) {
                return true;
            }
        }
        return false;
    }

    /** A path of a piece where it lies on the sheet. */
    static Path there(Path path, Placed placed) {
        return path.moved(trueseam.geometry.Motion.slide(placed.origin().minus(Point.ORIGIN)));
    }
}
