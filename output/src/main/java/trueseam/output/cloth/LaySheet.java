package trueseam.output.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.need.WidthNeed;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Align;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PdfBook;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Shapes;
import trueseam.output.sheet.SheetFlow;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.sheet.SheetTable;
import trueseam.output.sheet.SheetTable.Cell;
import trueseam.output.sheet.SheetTable.Column;
import trueseam.output.words.ClothWords;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;

/** The layout to pin by: a picture at a stated scale, where both ends of every grainline lie, and how much to buy. */
public final class LaySheet {

    private static final String CAUTIONS =
            "Wash and press the cloth first, measure both ends of each grainline from the selvage, and pin all pieces before you cut."
                    + " Cut a trial garment first.";

    private static final Lettering TITLE = Lettering.of(6).heavy();
    private static final Lettering HEADING = Lettering.of(3.6).heavy();
    private static final Lettering TEXT = Lettering.of(3);
    private static final Pen CLOTH = Pen.of(0.3);
    private static final Pen SELVAGE = Pen.of(0.15).gray(0.5);
    private static final Pen CUT = Pen.of(0.3);
    private static final Pen GRAIN = Pen.of(0.2);
    private static final List<Column> PLACES = List.of(
            new Column("No.", 8, Align.RIGHT),
            new Column("Piece", 40, Align.LEFT),
            new Column("Lies", 46, Align.LEFT),
            new Column("Grain: first end, along", 24, Align.RIGHT),
            new Column("and across", 34, Align.RIGHT),
            new Column("Second end, along", 24, Align.RIGHT),
            new Column("and across", 34, Align.RIGHT));
    private static final List<Column> WIDTHS = List.of(
            new Column("Cloth width", 30, Align.RIGHT),
            new Column("Needed", 30, Align.RIGHT),
            new Column("Buy", 30, Align.RIGHT),
            new Column("Becomes garment", 30, Align.RIGHT),
            new Column("Note", 80, Align.LEFT));

    private final Lay lay;
    private final List<WidthNeed> needs;
    private final LengthFormat show;
    private final RulerLength ruler;
    private final SheetFlow flow;

    private LaySheet(Lay lay, List<WidthNeed> needs, LengthFormat show, SheetFlow flow) {
        this.lay = lay;
        this.needs = needs;
        this.show = show;
        this.ruler = new RulerLength(show);
        this.flow = flow;
    }

    /**
     * Sets the sheet.
     *
     * @param title what is laid
     * @param lay the layout
     * @param needs what other widths need; may be empty
     * @param show the user's unit
     * @param paper what it is printed on
     * @return a PDF
     */
    public static byte[] pdf(String title, Lay lay, List<WidthNeed> needs, LengthFormat show, SheetPaper paper) {
        PdfBook book = PdfBook.titled("Layout: " + title, "Pieces on cloth, with the places to pin them at");
        SheetFlow flow = SheetFlow.lying(book, paper, "Layout: " + title, CAUTIONS);
        LaySheet sheet = new LaySheet(lay, needs, show, flow);
        sheet.opening(title);
        sheet.picture();
        sheet.places();
        sheet.widths();
        return flow.finished();
    }

    private void opening(String title) {
        flow.paragraph("Layout: " + title, TITLE, 1);
        Cloth cloth = lay.cloth();
        flow.paragraph(
                String.format(
                        Locale.ROOT,
                        "%s %s wide, %s%s. %s needed%s, buy %s. %.0f %% of it becomes garment.",
                        MeasureWords.capital(lay.stuff().word())
                                + (lay.stuff() == trueseam.cloth.goods.Stuff.FASHION ? " cloth" : ""),
                        show.show(cloth.widthMm()),
                        cloth.layers().words(),
                        cloth.oneWay() ? ", one way up" : "",
                        show.show(lay.neededMm()),
                        cloth.shrinkLength() > 0
                                ? String.format(
                                        Locale.ROOT, " after it has shrunk by %.1f %%", 100 * cloth.shrinkLength())
                                : "",
                        ClothWords.buy(ClothWords.shop(show).roundUpMm(lay.toBuyMm()), show),
                        100 * lay.density()),
                TEXT,
                1);
        for (String note : ClothWords.notes(lay, show)) {
            flow.paragraph(MeasureWords.capital(note), TEXT.heavy(), 1);
        }
    }

    private void picture() {
        Cloth cloth = lay.cloth();
        double selvage = cloth.selvageMm();
        double lower = cloth.layers() == Layers.LENGTHWISE ? 0 : -selvage;
        Bounds all = new Bounds(0, lower, lay.usedMm(), cloth.usableMm() + selvage);
        double high = Math.min(flow.room() - 12, flow.width() * all.height() / all.width());
        flow.need(Math.max(40, Math.min(high, 60)) + 12);
        high = Math.min(flow.room() - 12, flow.width() * all.height() / all.width());
        double top = flow.y();
        Bounds room = new Bounds(flow.left(), top - high, flow.left() + flow.width(), top);
        Canvas map = flow.page().fitting(all, room);
        map.stroke(Shapes.rectangle(all), CLOTH);
        map.line(new Point(0, cloth.usableMm()), new Point(lay.usedMm(), cloth.usableMm()), SELVAGE);
        if (lower < 0) {
            map.line(new Point(0, 0), new Point(lay.usedMm(), 0), SELVAGE);
        }
        for (LaidPiece piece : lay.pieces()) {
            map.fill(List.of(piece.cutting()), piece.placed().way().mirrored() ? 0.82 : 0.93);
            map.stroke(piece.cutting(), CUT);
        }
        drawFlaws(map);
        int number = 0;
        for (LaidPiece piece : lay.pieces()) {
            number++;
            map.line(piece.grainFrom(), piece.grainTo(), GRAIN);
            arrow(map, piece.grainFrom(), piece.grainTo());
            arrow(map, piece.grainTo(), piece.grainFrom());
            Bounds b = piece.cutting().bounds();
            String words = number + " " + piece.part().piece().name();
            Lettering fitted = map.typeface().fitted(words, TEXT, b.width() * map.scale() * 0.7, 1.6);
            map.text(words, b.centre(), fitted.centred().backed());
        }
        flow.down(high + 2);
        flow.paragraph(
                String.format(
                        Locale.ROOT,
                        "Scale 1 to %.1f. The cloth runs from left to right; %s lies below. Darker pieces lie face down. The double"
                                + " arrow is the grainline.",
                        1 / map.scale(),
                        cloth.layers() == Layers.LENGTHWISE ? "the fold" : "the lower selvage"),
                TEXT,
                3);
    }

    private void drawFlaws(Canvas map) {
        Cloth cloth = lay.cloth();
        for (Flaw flaw : cloth.flaws()) {
            Bounds at = cloth.asLaid(flaw);
            map.hatch(List.of(Shapes.rectangle(at)), 1.2 / map.scale(), Math.PI / 4, GRAIN);
            map.stroke(Shapes.rectangle(at), GRAIN);
        }
    }

    private static void arrow(Canvas map, Point tail, Point head) {
        double length = tail.distanceTo(head);
        double ux = (head.x() - tail.x()) / length;
        double uy = (head.y() - tail.y()) / length;
        double size = 1.6 / map.scale();
        for (int side : new int[] {-1, 1}) {
            map.line(
                    head,
                    new Point(head.x() - size * (ux + 0.4 * side * -uy), head.y() - size * (uy + 0.4 * side * ux)),
                    GRAIN);
        }
    }

    private void places() {
        flow.need(40);
        flow.paragraph("Where to pin", HEADING, 1);
        flow.paragraph(
                "Along is measured from the end of the cloth at the left of the picture, across from the line that is named. A piece lies"
                        + " on the grain when both ends of its grainline are as far from the selvage.",
                TEXT,
                2);
        List<List<Cell>> rows = new ArrayList<>();
        int number = 0;
        for (LaidPiece piece : lay.pieces()) {
            number++;
            List<LayPlaces.GrainEnd> ends = LayPlaces.ends(lay, piece);
            List<Cell> row = new ArrayList<>();
            row.add(Cell.of(Integer.toString(number)));
            row.add(Cell.of(piece.part().piece().name()));
            row.add(Cell.of(LayPlaces.how(piece, lay.cloth().layers())));
            for (LayPlaces.GrainEnd end : ends) {
                row.add(Cell.of(ruler.show(end.alongMm())));
                row.add(Cell.of(ruler.show(end.acrossMm()), "from the " + end.from()));
            }
            rows.add(row);
        }
        new SheetTable(flow, PLACES, flow.width()).set(rows);
    }

    private void widths() {
        if (needs.isEmpty()) {
            return;
        }
        flow.need(40);
        flow.paragraph("Other widths", HEADING, 1);
        List<List<Cell>> rows = new ArrayList<>();
        for (WidthNeed need : needs) {
            rows.add(List.of(
                    Cell.of(ClothWords.sold(need.widthMm())),
                    Cell.of(need.needed().map(n -> show.show(n.neededMm())).orElse("-")),
                    Cell.of(need.needed()
                                    .map(n -> ClothWords.buy(n.toBuyMm(ClothWords.shop(show)), show))
                                    .orElse("-"))
                            .heavier(),
                    Cell.of(need.needed()
                            .map(n -> String.format(Locale.ROOT, "%.0f %%", 100 * n.density()))
                            .orElse("-")),
                    Cell.of(need.why())));
        }
        new SheetTable(flow, WIDTHS, flow.width()).set(rows);
    }
}
