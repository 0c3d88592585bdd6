package trueseam.drafting;

import trueseam.garment.measure.Measure;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * The raglan seam of one piece and what it cuts off for the sleeve.
 *
 * <pre>{@code
 *     R--P          P neck point, S shoulder point, N where the armhole runs nearly towards R.
 *    /     \__S     The seam follows the armhole from U to N and goes on to R in the neck.
 *   (        )      What lies beyond it, N S P R, is laid against the cap of the sleeve with S
 *    \_     N       on the crown and the line S N on the line from the crown to the same place
 *      \__U         of the cap; the sleeve's seam is then drawn to R as long as that of the piece.
 * }</pre>
 *
 * Source: common practice.
 */
final class RaglanSeam {

    /** How far from its own direction to the neck the armhole may run where the seam leaves it. */
    private static final double LEAVES_RAD = Math.toRadians(20);

    private static final double LATEST_SHARE = 0.95; // of the lower half of the armhole
    private static final double EARLIEST_SHARE = 0.35;
    private static final int HALVINGS = 50;

    private final String shell;
    private final Path armhole;
    private final double leavesMm;
    private final Path upper; // from the armhole to the neck
    private final Path neckPart; // from the neck point to the seam
    private final Path neckRest; // from the seam to the centre
    private final ShoulderLine shoulder;

    /**
     * @param shell what is drafted
     * @param armhole of the piece, from the underarm to the shoulder point
     * @param shoulder of the piece, without a dart
     * @param neck from the neck point to the centre
     * @param inNeckMm how far from the neck point the seam meets the neck
     */
    RaglanSeam(String shell, Path armhole, ShoulderLine shoulder, Path neck, double inNeckMm) {
        this.shell = shell;
        this.armhole = armhole;
        this.shoulder = shoulder;
        Point end = neck.pointAt(inNeckMm);
        leavesMm = leaves(armhole, end);
        upper = Path.of(Joining.tangentFromStart(armhole.pointAt(leavesMm), armhole.tangentAt(leavesMm), end));
        neckPart = neck.part(0, inNeckMm);
        neckRest = neck.part(inNeckMm, neck.length());
    }

    private static double leaves(Path armhole, Point neckEnd) {
        double lower = armhole.segments().get(0).length();
        double from = EARLIEST_SHARE * lower;
        double to = LATEST_SHARE * lower;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (from + to) / 2;
            Vec towards = neckEnd.minus(armhole.pointAt(middle));
            // Below, the armhole runs more across than the line to the neck; above, more upright.
            if (armhole.tangentAt(middle).angleTo(towards) < LEAVES_RAD) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return from;
    }

    /** The seam of the piece, from the underarm to the neck. */
    Path ofPiece() {
        return armhole.part(0, leavesMm).then(upper);
    }

    /** The neck that the piece keeps, from the seam to the centre. */
    Path neckRest() {
        return neckRest;
    }

    /** The neck that the sleeve takes, from the neck point to the seam, where the piece lies. */
    Path neckPart() {
        return neckPart;
    }

    /** Where the notch is, from the underarm, on piece and sleeve. */
    double notchMm() {
        return leavesMm;
    }

    /** Lays what the seam cuts off against the cap. */
    Motion laid(Path cap) {
        Point top = shoulder.shoulderPoint();
        Vec there = armhole.pointAt(leavesMm).minus(top);
        Vec here = cap.pointAt(leavesMm).minus(cap.end());
        return Motion.slide(cap.end().minus(top)).then(Motion.pivot(cap.end(), there.angleTo(here)));
    }

    /**
     * The seam of the sleeve.
     *
     * @param cap its half of the cap, from the underarm to the crown
     */
    Path ofSleeve(Path cap) {
        Motion laid = laid(cap);
        Point end = laid.apply(upper.end());
        try {
            return cap.part(0, leavesMm)
                    .then(Path.of(Joining.smoothOfLength(
                            cap.pointAt(leavesMm),
                            cap.tangentAt(leavesMm),
                            end,
                            laid.apply(upper.endTangent()),
                            upper.length())));
        } catch (GeometryException tooFar) {
            throw new DraftException(
                    shell,
                    Measure.UPPER_ARM_GIRTH,
                    upper.length(),
                    cap.pointAt(leavesMm).distanceTo(end),
                    "the seam from the armhole to the neck cannot be drawn as long on the sleeve as on the bodice; choose"
                            + " another ease of the upper arm");
        }
    }
}
