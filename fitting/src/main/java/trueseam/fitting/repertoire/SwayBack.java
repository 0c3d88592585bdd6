package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;

/** Sway-back: the waist rises at the centre back to nothing at the side, and the centre back is ruled straight again. */
final class SwayBack {

    static final Entry ENTRY = Entry.named("sway-back", Family.BODICE, Stage.BACK, UpperKinds.BODICE_BACKS)
            .folds(
                    "folds across the waist at the centre back that stop before the side, and stay when the skirt is pulled down; where they go,"
                            + " the hip is tight and is to be widened instead [web:sway2]")
            .amount("raises the centre back waist", "lowers the centre back waist")
            .moves("the back waist line, to nothing at the side seam")
            .sharing("the full amount on the half back")
            .pin("side waist")
            .stays(Stay.back(EdgeRole.SIDE), Stay.back(EdgeRole.ARMHOLE), Stay.front(EdgeRole.WAIST))
            .alsoStays("the front, the hem level")
            .trued("the centre back is ruled straight on the fold; the waist at the centre is smoothed")
            .source("web:sway1, common practice")
            .amounts(9.525, 19.05)
            .doneBy(Maker.each(UpperKinds.BODICE_BACKS, SwayBack::steps));

    private SwayBack() {}

    private static void steps(StepList list, Piece piece, double mm) {
        Corners corners = new Corners(piece);
        Place centre = corners.centreWaist();
        list.add(new Step.Mark("centre back mark", centre, 0, mm));
        list.add(new Step.Pin(corners.sideWaist()));
        list.add(new Step.Pivot(new Until.MeetsAlong(centre, "centre back mark")));
        String waist = centre.edge();
        list.trace(waist, 0, piece.edge(waist).length());
        list.add(new Step.Straighten(corners.edge(EdgeRole.CENTRE).name()));
    }
}
