package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
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

/**
 * Sway-back of a back without a waist seam: a fold across the waist, pinched at the centre to nothing at the side. What hangs below
 * swings about the side waist, and the centre is ruled straight again on the fold, so that the skirt loses there what stood over it;
 * a back that needs its whole hip is better cut with a seam at the centre.
 */
final class SwayBackFold {

    /** How much of the centre is ruled new beside the fold, mm. */
    private static final double BESIDE_MM = 5;

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
            .alsoStays("the front; the back above the waist")
            .trued(
                    "the centre back is ruled straight on the fold: the hip loses there, and is fitted again at the sides")
            .source("web:sway1, common practice")
            .amounts(6.35, 12.7)
            .doneBy(Maker.each(Set.of(PieceKind.DRESS_BACK), SwayBackFold::steps));

    private SwayBackFold() {}

    private static void steps(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place side = part.corners.onLevel(EdgeRole.SIDE, LevelName.WAIST, "side waist");
        Place hem = part.corners.at(EdgeRole.SIDE, EdgeRole.HEM, "side hem");
        Place hemOfSide = part.corners.at(EdgeRole.HEM, EdgeRole.SIDE, "side hem");
        Place top = part.centreTop();
        Place waist = BackOpening.centreAt(part, side.on(piece).y(), "centre back at the waist");
        double down = part.from(top, waist);
        list.cut("lower back", waist, List.of(), side, hem);
        list.add(new Step.Spread(Spot.of(piece, side), new Until.MovesAlong(Spot.of(piece, waist), mm)));
        part.trace(hem, 0, part.from(hem, side));
        part.traceWhole(hemOfSide);
        double from = down + mm + BESIDE_MM;
        part.trace(top, from, part.length(top));
        part.join(top, down, from, JoinForm.STRAIGHT);
        list.add(new Step.Straighten(top.edge()));
    }
}
