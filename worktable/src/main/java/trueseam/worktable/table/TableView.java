package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.handle.Handles;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Bounds;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Workings;

/**
 * What the Table screen shows.
 *
 * @param fit the fit, or why there is none
 * @param places how large the table is
 * @param pieces the pieces
 * @param handles the handles
 * @param rows the numbers
 * @param chapters what was done, piece by piece, to be played
 * @param seams the seams, to be walked
 * @param inches whether lengths are in inches
 */
public record TableView(
        Outcome<FitResult> fit,
        Places places,
        List<PieceView> pieces,
        List<HandleView> handles,
        List<NumberRow> rows,
        List<ChapterRow> chapters,
        List<String> seams,
        boolean inches) {

    private static final double EIGHTH_INCH_MM = 25.4 / 8;
    private static final double TWO_MM = 2;

    /** Does not change. */
    public TableView {
        pieces = List.copyOf(pieces);
        handles = List.copyOf(handles);
        rows = List.copyOf(rows);
        chapters = List.copyOf(chapters);
        seams = List.copyOf(seams);
    }

    /**
     * One piece of one alteration.
     *
     * @param at its place in the work
     * @param title the alteration and the piece
     * @param truing whether it is truing
     */
    public record ChapterRow(int at, String title, boolean truing) {}

    static TableView of(Workings workings) {
        Outcome<FitResult> outcome = workings.fit();
        boolean inches = workings.project().person().bareUnit() == LengthUnit.INCH;
        if (!outcome.isThere()) {
            Places none = Places.of(List.of(), List.of());
            return new TableView(outcome, none, List.of(), List.of(), List.of(), List.of(), List.of(), inches);
        }
        FitResult fit = outcome.get();
        Places places = Places.of(
                fit.worked().original().pieces(), fit.worked().altered().pieces());
        return new TableView(
                outcome,
                places,
                fit.worked().pieces().stream()
                        .map(piece -> PieceView.of(
                                piece, places.places().get(piece.now().name())))
                        .toList(),
                Handles.of(fit).stream()
                        .map(handle -> HandleView.of(handle, fit))
                        .toList(),
                NumberRow.of(fit),
                chapters(fit),
                seams(fit.worked().altered(), fit.choices().show()),
                inches);
    }

    private static List<ChapterRow> chapters(FitResult fit) {
        List<ChapterRow> rows = new ArrayList<>();
        for (Chapter chapter : fit.worked().chapters()) {
            rows.add(new ChapterRow(
                    rows.size(), chapter.title() + ": " + chapter.before().name(), chapter.truing()));
        }
        return rows;
    }

    private static List<String> seams(Pattern pattern, LengthFormat show) {
        List<String> names = new ArrayList<>();
        for (Seam seam : pattern.seams()) {
            double off = pattern.mismatchMm(seam);
            names.add(seam.name() + (Math.abs(off) < show.stepMm() / 2 ? "" : " (" + show.showSigned(off) + ")"));
        }
        return names;
    }

    /**
     * The handles of a piece.
     *
     * @param piece its name
     * @return its handles
     */
    public List<HandleView> handlesOf(String piece) {
        return handles.stream().filter(handle -> handle.piece().equals(piece)).toList();
    }

    /**
     * What the proofs say.
     *
     * @return nothing where there is no fit
     */
    public ProofsView proofs() {
        return fit.value().map(f -> ProofsView.of(f.report())).orElse(ProofsView.NONE);
    }

    /**
     * Whether the pieces only show the steps of a paper pattern.
     *
     * @return true for a paper pattern
     */
    public boolean schematic() {
        return fit.value().map(FitResult::schematic).orElse(false);
    }

    /**
     * What the table takes up.
     *
     * @return for an SVG's view
     */
    public String box() {
        Bounds area = places.area();
        return Numbers.text(area.minX()) + " " + Numbers.text(area.minY()) + " " + Numbers.text(area.width()) + " "
                + Numbers.text(area.height());
    }

    /**
     * How far an arrow key moves.
     *
     * @return mm: 1/8 in, or 2 mm
     */
    public double keyMm() {
        return inches ? EIGHTH_INCH_MM : TWO_MM;
    }
}
