package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/**
 * Sway-back of a back without a waist seam: a fold across the waist, pinched at the centre to nothing at the side.
 *
 * <pre>{@code
 *   waist  c______s     What hangs below swings about the side waist s until the centre has gone up. Below, it then
 *          |      |     stands over the fold, the more the lower: ruled straight, the fold takes that from the hip.
 *         /      /      Either the side gives it back, or the centre gets a seam, or the hip has room for it.
 *        /______/
 * }</pre>
 */
final class SwayBackFold {

    /** How much of the centre is ruled new beside the fold, mm. */
    private static final double BESIDE_MM = 5;

    /** How much of the centre is drawn new on either side of the fold where it becomes a seam, mm. */
    private static final double SEAM_BESIDE_MM = 15;

    private static final Set<PieceKind> BACK = Set.of(PieceKind.DRESS_BACK);

    static final Entry ENTRY = Entry.named(
                    "sway-back without a waist seam", Family.BODICE, Stage.BACK, PieceKind.DRESS_BACK)
            .folds("folds across the waist at the centre back that stop before the side")
            .amount("pinches a fold out of the centre back at the waist", "")
            .moves("the back below the waist")
            .sharing("the full amount on the half back, at its centre, to nothing at the side seam")
            .pin("hinge at the side waist")
            .stays(
                    Stay.back(EdgeRole.SIDE),
                    Stay.back(EdgeRole.ARMHOLE),
                    Stay.back(EdgeRole.SHOULDER),
                    Stay.back(EdgeRole.NECK))
            .alsoStays("the front; the back above the waist; the hip, but for the way that says so")
            .trued("on the fold the centre back is ruled straight; with a seam it is drawn smooth at the waist")
            .source("web:sway1, common practice")
            .amounts(6.35, 12.7)
            .variant(
                    "given back at the side",
                    "the centre stays on the fold, and the side seam stays where it is: what the fold takes below the waist opens as a"
                            + " wedge beside the side seam, so that the hip keeps its girth (common practice)",
                    Maker.each(BACK, SwayBackFold::givenBack))
            .variant(
                    "centre back seam",
                    "the best fit: the centre follows the hollow of the back and is no longer cut on the fold; the hip keeps its girth"
                            + " (common practice)",
                    Maker.each(BACK, SwayBackFold::seamed))
            .variant(
                    "on the fold",
                    "where the hip has room: the centre is ruled straight on the fold, and the hip becomes smaller by what stands over it"
                            + " (common practice)",
                    Maker.each(BACK, SwayBackFold::ruled))
            .written();

    private final StepList list;
    private final UpperPart part;
    private final double mm;
    private final Place side;
    private final Place hem;
    private final Place hemOfSide;
    private final Place top;
    private final Place waist;
    private final double down;

    private SwayBackFold(StepList list, Piece piece, double mm) {
        this.list = list;
        this.part = new UpperPart(list, piece);
        this.mm = mm;
        this.side = part.corners.onLevel(EdgeRole.SIDE, LevelName.WAIST, "side waist");
        this.hem = part.corners.at(EdgeRole.SIDE, EdgeRole.HEM, "side hem");
        this.hemOfSide = part.corners.at(EdgeRole.HEM, EdgeRole.SIDE, "side hem");
        this.top = part.centreTop();
        this.waist = BackOpening.centreAt(part, side.on(piece).y(), "centre back at the waist");
        this.down = part.from(top, waist);
    }

    private static void givenBack(StepList list, Piece piece, double mm) {
        SwayBackFold fold = new SwayBackFold(list, piece, mm);
        Place middle = fold.part.at(fold.hemOfSide, fold.part.length(fold.hemOfSide) / 2, "hem");
        list.cut("lower back", fold.waist, List.of(Spot.of(piece, fold.side)), fold.hemOfSide, middle);
        fold.swing();
        fold.rule();
        list.join(fold.hemOfSide, fold.hemOfSide, JoinForm.STRAIGHT);
        list.add(new Step.Straighten(fold.top.edge()));
    }

    private static void ruled(StepList list, Piece piece, double mm) {
        SwayBackFold fold = new SwayBackFold(list, piece, mm);
        fold.cutToTheSide();
        fold.rule();
        list.add(new Step.Straighten(fold.top.edge()));
    }

    private static void seamed(StepList list, Piece piece, double mm) {
        SwayBackFold fold = new SwayBackFold(list, piece, mm);
        fold.cutToTheSide();
        double from = fold.down + mm + SEAM_BESIDE_MM;
        fold.part.trace(fold.top, from, fold.part.length(fold.top));
        fold.part.join(
                fold.top, fold.down - SEAM_BESIDE_MM, from, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        if (piece.fold().filter(fold.top.edge()::equals).isPresent()) {
            double seam = piece.edge(fold.side.edge()).allowanceMm();
            list.add(new Step.Unfold(fold.top.edge(), seam));
        }
    }

    private void cutToTheSide() {
        list.cut("lower back", waist, List.of(), side, hem);
        swing();
        part.trace(hem, 0, part.from(hem, side));
    }

    /** The part swings, and with it the hem; the levels below are marked where the side has them. */
    private void swing() {
        Piece piece = part.piece;
        list.add(new Step.Spread(Spot.of(piece, side), new Until.MovesAlong(Spot.of(piece, waist), mm)));
        part.traceWhole(hemOfSide);
        Motion swung = part.turnedUp(side, waist, mm);
        for (LevelName level : List.of(LevelName.HIP, LevelName.SKIRT_LENGTH)) {
            piece.level(level).ifPresent(y -> {
                double up = swung.apply(new Point(0, y)).y() - y;
                list.add(new Step.Remark(Step.Inside.LEVEL, level.word(), 0, -up));
            });
        }
    }

    private void rule() {
        double from = down + mm + BESIDE_MM;
        part.trace(top, from, part.length(top));
        part.join(top, down, from, JoinForm.STRAIGHT);
    }
}
