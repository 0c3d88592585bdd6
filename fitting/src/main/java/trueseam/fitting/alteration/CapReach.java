package trueseam.fitting.alteration;

import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.StepList;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * How much deeper a cap gets, and how far its crown goes across, so that each half drawn as gently as before is longer by its own
 * amount. Found by Newton's steps: two lengths for two unknowns.
 *
 * @param deeperMm crown and underarm farther apart by so much, mm
 * @param acrossMm the crown across the grain, mm, positive to the right
 */
record CapReach(double deeperMm, double acrossMm) {

    /** How much of the cap is left as it was on either side of the crown. */
    static final double CROWN_MM = 15;

    private static final int ROUNDS = 30;
    private static final double NEAR_MM = 1e-9;
    private static final double STEP_MM = 1e-3;

    /** No cap gets deeper or shallower by more than this share of its depth. */
    private static final double MOST_SHARE = 0.5;

    static CapReach of(List<SleeveHalf> halves, double rightMm, double leftMm) {
        SleeveHalf right = halves.get(0);
        SleeveHalf left = halves.get(1);
        double wantedRight = gentle(right, 0, 0) + rightMm;
        double wantedLeft = gentle(left, 0, 0) + leftMm;
        double deeper = 0;
        double across = 0;
        double most = MOST_SHARE
                * (right.crown().on(right.piece()).y()
                        - right.underarm().on(right.piece()).y());
        for (int round = 0; round < ROUNDS; round++) {
            double offRight = wantedRight - gentle(right, deeper, across);
            double offLeft = wantedLeft - gentle(left, deeper, across);
            if (Math.max(Math.abs(offRight), Math.abs(offLeft)) <= NEAR_MM) {
                return new CapReach(deeper, across);
            }
            double rightDown = slope(right, deeper, across, true);
            double rightAcross = slope(right, deeper, across, false);
            double leftDown = slope(left, deeper, across, true);
            double leftAcross = slope(left, deeper, across, false);
            double det = rightDown * leftAcross - rightAcross * leftDown;
            deeper += (offRight * leftAcross - rightAcross * offLeft) / det;
            across += (rightDown * offLeft - offRight * leftDown) / det;
            if (!(Math.abs(deeper) <= most && Math.abs(across) <= most)) {
                break;
            }
        }
        throw new AlterationException(
                right.piece().name(),
                "cap",
                rightMm + leftMm,
                "the cap cannot follow the armhole so far; take the size whose armhole is nearer.");
    }

    private static double slope(SleeveHalf half, double deeper, double across, boolean down) {
        double more = down ? gentle(half, deeper + STEP_MM, across) : gentle(half, deeper, across + STEP_MM);
        double less = down ? gentle(half, deeper - STEP_MM, across) : gentle(half, deeper, across - STEP_MM);
        return (more - less) / (2 * STEP_MM);
    }

    /** By how much a half cap gets longer when the crown goes up and the line stays as gentle as it was. */
    static double growth(SleeveHalf half, double higherMm) {
        return gentle(half, higherMm, 0) - gentle(half, 0, 0);
    }

    /** The gentle line from the notch to the crown when the crown lies higher and farther across. */
    private static double gentle(SleeveHalf half, double deeper, double across) {
        Path cap = half.cap().path();
        double notch = half.capFromUnderarm(half.lowerCapMm());
        double crown = half.capFromUnderarm(half.cap().length() - CROWN_MM);
        Vec slid = new Vec(across, deeper);
        Point atNotch = cap.pointAt(notch);
        Point atCrown = cap.pointAt(crown).plus(slid);
        return half.right()
                ? Joining.smooth(atNotch, cap.tangentAt(notch), atCrown, cap.tangentAt(crown))
                        .length()
                : Joining.smooth(atCrown, cap.tangentAt(crown), atNotch, cap.tangentAt(notch))
                        .length();
    }

    /** Draws the cap between the notch and the crown new, longer by so much. */
    static void draw(StepList list, SleeveHalf half, double longerMm) {
        double notch = half.capFromUnderarm(half.lowerCapMm());
        double crown = half.capFromUnderarm(half.cap().length() - CROWN_MM);
        double from = Math.min(notch, crown);
        double to = Math.max(notch, crown);
        list.join(
                half.cap().name(),
                from,
                to,
                JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, to - from + longerMm));
    }

    /** The line of a given length into the lowered underarm. */
    static Cubic seam(SleeveHalf half, double gapMm, double downMm, double lengthMm) {
        Path seam = half.right() ? half.seam().path() : half.seam().path().reversed();
        double below = seam.length() - gapMm;
        return Joining.smoothOfLength(
                seam.pointAt(below),
                seam.tangentAt(below),
                seam.end().plus(new Vec(0, -downMm)),
                seam.endTangent(),
                lengthMm);
    }

    /** By how much a gentle line into the lowered underarm is longer than the top of the seam was. */
    static double seamGrowth(SleeveHalf half, double gapMm, double downMm) {
        Path seam = half.right() ? half.seam().path() : half.seam().path().reversed();
        double below = seam.length() - gapMm;
        return Joining.smooth(
                                seam.pointAt(below),
                                seam.tangentAt(below),
                                seam.end().plus(new Vec(0, -downMm)),
                                seam.endTangent())
                        .length()
                - gapMm;
    }
}
