package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;

/**
 * Front length alone: the waist drops at the centre front to nothing at the side; the back and the side seam stay. A dress is opened
 * across its waist, and its hem drops at the centre front, where it had risen.
 */
final class FrontLength {

    static final Entry ENTRY = Entry.named("front length", Family.BODICE, Stage.BUST, UpperKinds.FRONTS)
            .calledForBy(Measure.FRONT_WAIST_LENGTH, Measure.FRONT_WAIST_LENGTH_OVER_BUST)
            .folds("the front waist rises at the centre and the side sits well", "folds across the front waist")
            .amount("lowers the centre front waist", "raises the centre front waist")
            .moves(
                    "the front waist line, to nothing at the side seam; without a waist seam the front below a cut across the waist")
            .sharing("the full amount on the half front")
            .pin("side waist; without a waist seam the hinge of the cut")
            .stays(Stay.front(EdgeRole.SIDE), Stay.front(EdgeRole.ARMHOLE), Stay.back(EdgeRole.WAIST))
            .alsoStays("the back, the side seam; the hip of a dress")
            .trued("the centre front is ruled straight on the fold; the waist or the hem at the centre is smoothed")
            .source("[HERR32]; common practice")
            .amounts(9.525, 25.4)
            .doneBy(Maker.each(UpperKinds.FRONTS, FrontLength::steps));

    private FrontLength() {}

    private static void steps(StepList list, Piece piece, double mm) {
        if (piece.kind().isDress()) {
            new WaistSwing(list, piece, -mm).givenBackAtTheSide();
            return;
        }
        Corners corners = new Corners(piece);
        Place centre = corners.centreWaist();
        list.add(new Step.Mark("centre front mark", centre, 0, -mm));
        list.add(new Step.Pin(corners.sideWaist()));
        list.add(new Step.Pivot(new Until.MeetsAlong(centre, "centre front mark")));
        list.trace(centre.edge(), 0, piece.edge(centre.edge()).length());
        list.add(new Step.Straighten(corners.edge(EdgeRole.CENTRE).name()));
    }
}
