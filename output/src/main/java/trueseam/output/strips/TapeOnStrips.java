package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PdfBook;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;
import trueseam.output.print.Shelves;

/** A print of only what changes: the strips to tape onto a bought tissue, and those to fold or cut away from it. */
public final class TapeOnStrips {

    private static final String COVER = "cover";
    private static final double EDGE_MM = 10;

    /** Beside a strip, so that lines and joins of neighbours do not touch, mm. */
    private static final double GAP_MM = 3;

    /** Left of a strip, for two lines of words, mm. */
    private static final double WORDS_MM = 8;

    private static final Lettering WORDS = Lettering.of(2.8).turned(Math.PI / 2);

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
        List<Cutting.Strip> strips =
                Cutting.toFit(slivers(fit), room.width() - 2 * GAP_MM - WORDS_MM, room.height() - 2 * GAP_MM);
        String name = fit.worked().original().name();
        String title = "Strips for " + name + (options.label().isBlank() ? "" : ", for " + options.label());
        PdfBook book = PdfBook.titled(title, "Strips to tape onto tissue, at full size: print at 100 %.");
        List<String> failures =
                fit.report().failures().stream().map(Proof::sentence).toList();
        StripCover cover = new StripCover(title, fit.schematic(), strips, failures);
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
                    draw(page, strips.get(i), i + 1, topLeft);
                }
            }
        }
        return book.finished();
    }

    /** What the strips are cut from; none for drafted pieces that only show the steps, which are not the dressmaker's tissue. */
    static List<Sliver> slivers(FitResult fit) {
        List<Sliver> slivers = new ArrayList<>();
        if (!fit.schematic()) {
            for (AlteredPiece piece : fit.worked().pieces()) {
                slivers.addAll(Sliver.of(piece));
            }
        }
        return slivers;
    }

    private static String place(Cutting.Strip strip, int number) {
        return "strip " + number + ": " + strip.sliver().place();
    }

    private static Shelves.Box box(PdfBook book, Cutting.Strip strip, int i, Bounds room) {
        double words = Math.max(
                book.typeface().widthOf(place(strip, i + 1), WORDS),
                book.typeface().widthOf(strip.sliver().task(), WORDS));
        double height = Math.max(strip.bounds().height(), words) + 2 * GAP_MM;
        return new Shelves.Box(
                String.valueOf(i), strip.bounds().width() + WORDS_MM + 2 * GAP_MM, Math.min(height, room.height()));
    }

    private static void draw(Canvas page, Cutting.Strip strip, int number, Point topLeft) {
        Sliver sliver = strip.sliver();
        Bounds b = strip.bounds();
        Point corner = topLeft.plus(new Vec(GAP_MM + WORDS_MM, -GAP_MM - b.height()));
        Motion onPage = strip.turn().then(Motion.slide(corner.minus(new Point(b.minX(), b.minY()))));
        List<Path> area = moved(sliver.area().outlines(), onPage);
        if (!sliver.added()) {
            page.hatch(area, 2.5, Math.PI / 4, StripCover.AWAY);
        }
        page.stroke(moved(sliver.paper().outlines(), onPage), StripCover.CUT);
        if (!sliver.added()) {
            page.stroke(area, StripCover.FINE);
        }
        page.stroke(moved(sliver.onOldLine(), onPage), StripCover.OLD);
        for (Sliver.Join join : sliver.joins()) {
            Point at = onPage.apply(join.at());
            page.line(at.plus(new Vec(0, -3)), at.plus(new Vec(0, 3)), StripCover.CUT);
            double inward = at.y() > corner.y() + b.height() / 2 ? -5 : 3;
            page.text(
                    "join " + join.number(),
                    at.plus(new Vec(0, inward)),
                    Lettering.of(2.6).heavy().centred().backed());
        }
        double low = topLeft.y() - GAP_MM - Math.max(b.height(), 0);
        double start = Math.min(low, topLeft.y() - GAP_MM - page.typeface().widthOf(sliver.task(), WORDS));
        double left = topLeft.x() + GAP_MM + 2.4;
        page.text(place(strip, number), new Point(left, start), WORDS);
        page.text(sliver.task(), new Point(left + WORDS.lineMm(), start), WORDS);
    }

    private static List<Path> moved(List<Path> paths, Motion by) {
        return paths.stream().map(p -> p.moved(by)).toList();
    }
}
