package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Figure;
import trueseam.output.drawing.PdfBook;

/**
 * A pattern printed at full size.
 *
 * <p>Laws: (1) every part of every piece lies on a page, at full size; (2) pages without any of a piece are left out; (3) what two
 * neighbouring pages share is the same on both.
 */
public final class FullSizePrint {

    /** Between page one and the others on the map, in widths of a page. */
    private static final double BESIDE = 0.2;

    private final WorkedPattern worked;
    private final PrintOptions options;
    private final List<String> warnings;
    private final List<PieceLines> pieces = new ArrayList<>();
    private final Layout layout;
    private final boolean schematic;

    private FullSizePrint(WorkedPattern worked, PrintOptions options, List<String> warnings, boolean schematic) {
        this.schematic = schematic;
        this.worked = worked;
        this.options = options;
        this.warnings = List.copyOf(warnings);
        for (AlteredPiece piece : worked.pieces()) {
            pieces.add(PieceLines.of(piece, options));
        }
        layout = new Layouts(pieces, options).layout();
    }

    /**
     * Lays out a pattern.
     *
     * @param worked the pattern before and after; {@link WorkedPattern#of} for one that nothing is done to
     * @param options how it is printed
     * @param warnings what page one says against cutting it, each a sentence; usually none
     * @return the print
     * @throws PieceTooWideException if a piece does not fit on a roll
     */
    public static FullSizePrint of(WorkedPattern worked, PrintOptions options, List<String> warnings) {
        return new FullSizePrint(worked, options, warnings, false);
    }

    /**
     * Lays out a fitted pattern; page one says which proofs do not hold, and that drafted pieces which only show the steps are not
     * to be cut.
     *
     * @param fit the fit
     * @param options how it is printed
     * @return the print
     * @throws PieceTooWideException if a piece does not fit on a roll
     */
    public static FullSizePrint of(FitResult fit, PrintOptions options) {
        List<String> against = new ArrayList<>();
        if (fit.schematic()) {
            against.add(
                    "These pieces were drafted to show the steps; they are not your paper pattern. Alter that by the"
                            + " step sheet.");
        }
        fit.report().failures().stream().map(Proof::sentence).forEach(against::add);
        return new FullSizePrint(fit.worked(), options, against, fit.schematic());
    }

    /**
     * Where everything lies.
     *
     * @return pieces and pages
     */
    public Layout layout() {
        return layout;
    }

    /**
     * How the pages go together.
     *
     * @return the map, with a page one that stands alone to the left of the others
     */
    public PrintMap map() {
        List<PrintMap.Outline> outlines = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Placed placed = layout.pieces().get(i);
            outlines.add(new PrintMap.Outline(
                    placed.piece(), Layouts.there(pieces.get(i).outline(), placed)));
        }
        List<Bounds> cover = new ArrayList<>();
        if (layout.cover().isEmpty()) {
            Bounds all = new PrintMap(List.of(), layout.tiles(), List.of(), layout.joined()).all();
            Bounds page = layout.tiles().get(0).window();
            double right = all.minX() - BESIDE * page.width();
            cover.add(new Bounds(right - page.width(), all.maxY() - page.height(), right, all.maxY()));
        }
        return new PrintMap(cover, layout.tiles(), outlines, layout.joined());
    }

    /**
     * The print as a file.
     *
     * @return bytes of a PDF
     */
    public byte[] pdf() {
        Pattern pattern = options.has(PrintedLine.ALTERED) ? worked.altered() : worked.original();
        String title = title(pattern);
        PdfBook book = PdfBook.titled(title, "Sewing pattern at full size: print at 100 %.");
        PrintLayers layers = PrintLayers.of(book);
        List<Figure> figures = new ArrayList<>();
        List<Footprint> footprints = new ArrayList<>();
        List<FreeRoom> rooms = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            PieceLines piece = pieces.get(i);
            FreeRoom room = new FreeRoom(new Footprint(List.of(piece.outline())));
            layout.joinsOn(layout.pieces().get(i)).forEach(room::keep);
            layout.marksOn(layout.pieces().get(i)).forEach(room::keep);
            rooms.add(room);
            PieceTitle words = new PieceTitle(pattern, piece, options, schematic);
            figures.add(
                    book.figure(piece.bounds(), c -> new PieceDrawing(piece, layers, room).draw(c, words, options)));
            footprints.add(new Footprint(piece.outlines()));
        }
        CoverSheet cover = new CoverSheet(pattern, pieces, layout, options, warnings);
        if (layout.cover().isEmpty()) {
            Tile any = layout.tiles().get(0);
            Canvas first = book.page(any.window().width(), any.window().height());
            cover.draw(
                    first, new Bounds(0, 0, any.window().width(), any.window().height()).grown(-Layouts.MARGIN_MM));
        }
        TilePage marks = new TilePage(layout);
        for (Tile tile : layout.tiles()) {
            Bounds window = tile.window();
            Canvas page = book.page(window.width(), window.height()).view(1, new Point(-window.minX(), -window.minY()));
            page.within(tile.frame(), c -> {
                for (int i = 0; i < figures.size(); i++) {
                    if (layout.pieces().get(i).area().meets(tile.frame(), 0)) {
                        c.show(figures.get(i), layout.pieces().get(i).origin());
                    }
                }
            });
            if (layout.joined()) {
                marks.draw(page, tile);
                marks.drawTag(page, tile, title, footprints, rooms);
            } else if (tile.page() == 1) {
                cover.draw(page, layout.cover().orElseThrow());
            }
        }
        return book.finished();
    }

    private String title(Pattern pattern) {
        String label = options.label().isBlank() ? "" : ", for " + options.label();
        return Names.withSize(pattern) + label;
    }
}
