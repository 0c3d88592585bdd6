package trueseam.output.strips;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Step;
import trueseam.garment.pattern.CuttingLine;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.PdfBook;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;
import trueseam.output.print.Shelves;
import trueseam.output.words.RulerLength;

/** A print of only what changes: the strips to tape onto a bought tissue, and those to fold or cut away from it. */
public final class TapeOnStrips {

    private static final String COVER = "cover";
    private static final double EDGE_MM = 10;

    /** Beside a strip, so that lines and joins of neighbours do not touch, mm. */
    private static final double GAP_MM = 3;

    /** Left of a long strip, for two lines of words, mm. */
    private static final double WORDS_MM = 8;

    private TapeOnStrips() {}

    /**
     * The strips of a fit as a file.
     *
     * @param fit the fit
     * @param options the paper and the label; on other papers than A4 and US Letter the strips are set for A4
     * @return bytes of a PDF
     */
    public static byte[] pdf(FitResult fit, PrintOptions options) {
        boolean letter = options.paper().equals(Paper.LETTER);
        Paper.Sheet paper = (Paper.Sheet) (letter ? Paper.LETTER : Paper.A4);
        Bounds room = new Bounds(0, 0, paper.widthMm(), paper.heightMm()).grown(-EDGE_MM);
        List<Cutting.Strip> strips = strips(
                fit,
                new RulerLength(options.lengths()),
                room.width() - 2 * GAP_MM - WORDS_MM,
                room.height() - 2 * GAP_MM);
        String name = fit.worked().original().name();
        String title = "Strips for " + name + (options.label().isBlank() ? "" : ", for " + options.label());
        PdfBook book = PdfBook.titled(title, "Strips to tape onto tissue, at full size: print at 100 %.");
        List<String> failures =
                fit.report().failures().stream().map(Proof::sentence).toList();
        StripCover cover = new StripCover(title, fit.schematic(), strips, uncut(fit), opened(fit), failures);
        List<Shelves.Box> boxes = new ArrayList<>();
        boxes.add(new Shelves.Box(
                COVER, room.width(), Math.min(room.height(), cover.heightMm(book.typeface(), room.width()))));
        for (int i = 0; i < strips.size(); i++) {
            boxes.add(box(book, strips.get(i), i, room));
        }
        // The sheet that page one's words lie on comes first.
        Map<Integer, List<Shelves.Spot>> sheets = new TreeMap<>();
        List<Shelves.Spot> spots = Shelves.pack(boxes, room.width() + 1e-6, room.height() + 1e-6);
        int first = spots.stream()
                .filter(s -> s.box().name().equals(COVER))
                .mapToInt(Shelves.Spot::sheet)
                .findFirst()
                .orElseThrow();
        for (Shelves.Spot spot : spots) {
            int key = spot.sheet() == first ? -1 : spot.sheet();
            sheets.computeIfAbsent(key, k -> new ArrayList<>()).add(spot);
        }
        for (List<Shelves.Spot> sheet : sheets.values()) {
            Canvas page = book.page(paper.widthMm(), paper.heightMm());
            for (Shelves.Spot spot : sheet) {
                Point topLeft = new Point(room.minX() + spot.right(), room.maxY() - spot.down());
                if (spot.box().name().equals(COVER)) {
                    cover.draw(page, topLeft, room.width());
                } else {
                    int i = Integer.parseInt(spot.box().name());
                    Point from = topLeft.plus(new Vec(GAP_MM, -GAP_MM));
                    new StripDrawing(strips.get(i), i + 1).draw(page, from);
                }
            }
        }
        return book.finished();
    }

    /** The strips, cut to a sheet's room; none for drafted pieces that only show the steps, which are not her own tissue. */
    static List<Cutting.Strip> strips(FitResult fit, RulerLength ruler, double width, double height) {
        List<Sliver> slivers = new ArrayList<>();
        Map<String, List<Corners.Cut>> corners = new HashMap<>();
        if (!fit.schematic()) {
            for (AlteredPiece piece : fit.worked().pieces()) {
                if (isCut(piece)) {
                    String name = piece.now().name();
                    slivers.addAll(Sliver.of(piece, LengthChange.of(fit.worked(), name), ruler));
                    corners.put(name, Corners.cuts(piece.now()));
                }
            }
        }
        return Cutting.toFit(slivers, width, height, corners);
    }

    /** The altered pieces that have no cutting line. */
    private static List<String> uncut(FitResult fit) {
        return fit.worked().pieces().stream()
                .filter(piece -> !isCut(piece))
                .map(piece -> piece.now().name())
                .toList();
    }

    /** The pieces of which a part was turned about a hinge. */
    private static List<String> opened(FitResult fit) {
        return fit.worked().chapters().stream()
                .filter(chapter -> !fit.schematic() && chapter.steps().stream().anyMatch(Step.Spread.class::isInstance))
                .map(chapter -> chapter.before().name())
                .distinct()
                .toList();
    }

    private static boolean isCut(AlteredPiece piece) {
        return CuttingLine.find(piece.original()).isPresent()
                && CuttingLine.find(piece.now()).isPresent();
    }

    private static Shelves.Box box(PdfBook book, Cutting.Strip strip, int i, Bounds room) {
        StripDrawing drawing = new StripDrawing(strip, i + 1);
        double wide = strip.bounds().width() + drawing.wordsWideMm(book.typeface()) + 2 * GAP_MM;
        double high = drawing.highMm(book.typeface()) + 2 * GAP_MM;
        return new Shelves.Box(String.valueOf(i), Math.min(wide, room.width()), Math.min(high, room.height()));
    }
}
