package trueseam.fitting.repertoire;

import java.util.OptionalDouble;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Motion;
import trueseam.geometry.Vec;

/**
 * How the waist of a gore moves: the pattern is slid up, pinned, pivoted until a place has come to its mark, slid across; then its
 * waist is traced, and each seam beside it drawn anew from the hip to where its top came to lie.
 *
 * @param gore the gore
 * @param pin where it is pinned
 * @param pinUpMm how far the pin goes up first, mm
 * @param moved the place that comes to its mark
 * @param movedUpMm how far that goes up, mm
 * @param acrossMm how far all goes across at last, mm
 */
record GoreMove(Gore gore, Place pin, double pinUpMm, Place moved, double movedUpMm, double acrossMm) {

    Motion motion() {
        return Swing.along(gore.piece(), Spot.of(gore.piece(), pin), Spot.of(gore.piece(), moved), movedUpMm - pinUpMm)
                .then(Motion.slide(new Vec(acrossMm, pinUpMm)));
    }

    /** How long the gentle line of a seam is from its hip to where its top comes to lie. */
    double gentleMm(SeamLine seam) {
        return seam.gentleMm(gore.hip(seam), gore.top(seam), motion());
    }

    /** Refuses to take from a seam what it does not hold: above the hip it may come to stand upright and no more. */
    void requireHolds(SeamLine seam, double amountMm) {
        Place top = gore.top(seam);
        double past = motion().apply(top.on(gore.piece())).x()
                - gore.hip(seam).on(gore.piece()).x();
        if (seam.outward() * past > 0) {
            throw new AlterationException(
                    gore.piece().name(),
                    seam.edge.name(),
                    amountMm,
                    "the seam does not hold so much above the hip; take less here and the rest at the side seams, or take the"
                            + " next size.");
        }
    }

    void slideAndPivot(StepList list) {
        String mark = moved.word() + " mark";
        list.add(new Step.Mark(mark, moved, 0, movedUpMm));
        if (pinUpMm != 0) {
            list.add(new Step.Slide(0, pinUpMm));
        }
        list.add(new Step.Pin(pin));
        list.add(new Step.Pivot(new Until.MeetsAlong(moved, mark)));
        if (acrossMm != 0) {
            list.add(new Step.Slide(acrossMm, 0));
        }
    }

    void traceWaist(StepList list) {
        String waist = gore.piece().only(EdgeRole.WAIST).name();
        list.trace(waist, 0, gore.piece().edge(waist).length());
    }

    /** Draws a seam anew from the hip to the waist, of a length that its other edge has too; leaves it if there is none. */
    void join(StepList list, SeamLine seam, OptionalDouble lengthMm) {
        lengthMm.ifPresent(mm -> list.join(
                gore.hip(seam), gore.top(seam), JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, mm)));
    }
}
