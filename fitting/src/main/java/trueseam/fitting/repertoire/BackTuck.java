package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;

/** A tuck all the way across the upper back: everything above the across back level comes down by as much. */
final class BackTuck {

    /** How much of the armhole is drawn new above the level, and below it beside what the tuck takes, mm. */
    private static final double BESIDE_MM = 15;

    private final StepList list;
    private final UpperPart part;

    BackTuck(StepList list, UpperPart part) {
        this.list = list;
        this.part = part;
    }

    void lower(double mm) {
        Place top = part.armholeTop();
        Place level = part.across();
        Place centreTop = part.centreTop();
        Place onCentre = BackOpening.centreAt(part, level.on(part.piece).y(), "centre back at the across back level");
        double armhole = part.from(top, level);
        double centre = part.from(centreTop, onCentre);
        list.cut("upper back", onCentre, java.util.List.of(), level, centreTop);
        list.add(new Step.Slide(0, -mm));
        part.trace(top, 0, armhole - mm - BESIDE_MM);
        part.traceWhole(part.shoulderTip());
        part.traceWhole(part.neckCentre());
        part.trace(centreTop, 0, centre - mm - BESIDE_MM);
        part.join(centreTop, centre - mm - BESIDE_MM, centre, JoinForm.STRAIGHT);
        part.join(
                top,
                armhole - mm - BESIDE_MM,
                armhole + BESIDE_MM,
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }
}
