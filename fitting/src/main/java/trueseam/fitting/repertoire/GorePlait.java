package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/**
 * Full abdomen in a gored skirt by a dart-shaped plait across the gore beside the centre front [DM1911]: laid at the hip line from its
 * back edge to nothing at its front seam. What lies above swings back, so that the front seam bends more and the back edge less; that
 * edge may come to be straight and never hollow. What the plait takes from its length is added at the waist.
 *
 * <p>The source lays the plait to nothing 3/8 in from the front edge of the cut piece, which with its seams of 3/8 in is the stitching
 * line.
 *
 * <pre>{@code
 *      ____
 *     /    \       the waist: as long as it was, raised at the back so that the back edge keeps its length
 *    /      |
 *   P-------<      P hinge at the front seam, < the plait at the hip line of the back edge
 *   |        \
 * }</pre>
 */
final class GorePlait {

    /** A line that bends outwards by less than a pencil's point is straight. */
    private static final double HOLLOW_MM = 0.5;

    /** How exactly the waist is raised to keep the length of the back edge, mm. */
    private static final double SAME_LENGTH_MM = 1e-7;

    static final Entry ENTRY = Entry.named(
                    "plait for the abdomen", Family.SKIRT, Stage.WIDTH, PieceKind.SKIRT_SIDE_FRONT)
            .calledForBy(Measure.TOP_HIP_GIRTH)
            .folds("the gores of the front stand out over the abdomen and their hem rises")
            .amount("lays a plait across the gore beside the centre front, at the hip line", "")
            .moves("the gore beside the centre front above the hip line: its front seam bends more, its back edge less")
            .sharing(
                    "the whole plait at the back edge of each such gore, to nothing at its front seam; no gore behind the hip takes any")
            .pin(
                    "hip at the front seam of the gore, on the stitching line: 3/8 in from a cut edge with its seam of 3/8 in")
            .stays(
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.PANEL),
                    Stay.all(EdgeRole.HEM),
                    Stay.all(EdgeRole.CENTRE))
            .alsoStays("every other gore; below the hip line all")
            .trued(
                    "the back edge is drawn anew from hip to waist, as long as it was; the front seam is blended at the hip")
            .source(
                    "DM1911 (1/4 in at the back edge to nothing at the front; until that edge is straight, never hollow)")
            .amounts(6.35, 12.7)
            .doneBy(GorePlait::work);

    private final Gore gore;
    private final double gainsMm;
    private final Place innerHip;
    private final Place outerHip;
    private final Place innerTop;
    private final Place outerTop;

    private GorePlait(Gore gore, double gainsMm) {
        this.gore = gore;
        this.gainsMm = gainsMm;
        this.innerHip = gore.hip(gore.inner());
        this.outerHip = gore.hip(gore.outer());
        this.innerTop = gore.top(gore.inner());
        this.outerTop = gore.top(gore.outer());
    }

    private static List<PieceWork> work(Pattern pattern, double mm) {
        List<PieceWork> work = new ArrayList<>();
        for (List<Gore> half : Gore.halves(pattern, PieceKind::isFront)) {
            if (half.size() > 1) { // where the front is in one piece there is nothing to lay it in
                work.add(across(half.get(1), mm, 0));
            }
        }
        return work;
    }

    /**
     * A plait across a gore, from its outer edge to nothing at its inner seam.
     *
     * @param gainsMm by how much the outer edge gets longer, as the edge that it is sewn to does
     */
    static PieceWork across(Gore gore, double mm, double gainsMm) {
        return new GorePlait(gore, gainsMm).work(mm);
    }

    /** By how much the outer edge gets longer (minus: shorter) where the waist is to lie as level as it did. */
    static double levelGainsMm(Gore gore, double mm) {
        GorePlait plain = new GorePlait(gore, 0);
        Motion plait = plain.plait(mm);
        Point pin = plait.apply(plain.innerTop.on(gore.piece()));
        Motion level = plait.then(Motion.pivot(pin, -plait.turnRad()));
        return gore.outer().gentleMm(plain.outerHip, plain.outerTop, level) - plain.edgeMm();
    }

    private Motion plait(double mm) {
        return Swing.along(gore.piece(), spot(innerHip), spot(outerHip), -mm);
    }

    private PieceWork work(double mm) {
        Piece piece = gore.piece();
        double raised = raisedMm(mm);
        String waist = piece.only(EdgeRole.WAIST).name();
        StepList list = new StepList(piece);
        list.cut("upper part", innerHip, List.of(), outerHip, outerTop);
        list.add(new Step.Spread(spot(innerHip), new Until.MovesAlong(spot(outerHip), -mm)));
        list.trace(innerHip, innerTop);
        list.add(new Step.Spread(spot(innerTop), new Until.MovesAlong(spot(outerTop), raised)));
        list.trace(waist, 0, piece.edge(waist).length());
        list.join(outerHip, outerTop, JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, edgeMm()));
        return new PieceWork(piece.name(), list.finished());
    }

    private Spot spot(Place place) {
        return Spot.of(gore.piece(), place);
    }

    private double edgeMm() {
        return Math.abs(outerTop.alongMm() - outerHip.alongMm()) + gainsMm;
    }

    /** How far the waist is raised at the back edge so that it keeps its length: found by halving. */
    private double raisedMm(double mm) {
        Motion plait = plait(mm);
        double low = 0;
        double high = 0.9 * gore.waistWidth();
        if (gentleMm(plait, low) > edgeMm() || gentleMm(plait, high) < edgeMm()) {
            throw hollow(mm);
        }
        while (high - low > SAME_LENGTH_MM) {
            double middle = (low + high) / 2;
            if (gentleMm(plait, middle) < edgeMm()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double raised = (low + high) / 2;
        if (gore.outer().bulgeMm(outerHip, outerTop, then(plait, raised)) < -HOLLOW_MM) {
            throw hollow(mm);
        }
        return raised;
    }

    private double gentleMm(Motion plait, double raisedMm) {
        return gore.outer().gentleMm(outerHip, outerTop, then(plait, raisedMm));
    }

    /** The plait laid, then the part swung about the waist of its front seam until the waist of its back edge has gone up. */
    private Motion then(Motion plait, double raisedMm) {
        Point pin = plait.apply(innerTop.on(gore.piece()));
        Point moved = plait.apply(outerTop.on(gore.piece()));
        return plait.then(
                Swing.along(gore.piece(), new Spot(pin, innerTop.word()), new Spot(moved, outerTop.word()), raisedMm));
    }

    private AlterationException hollow(double mm) {
        return new AlterationException(
                gore.piece().name(),
                gore.outer().edge.name(),
                mm,
                "the outer edge may come to be straight above the hip and never hollow; lay a smaller plait and widen"
                        + " the gore at the hip, or take the next size.");
    }
}
