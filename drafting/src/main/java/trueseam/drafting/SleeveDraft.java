package trueseam.drafting;

import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;
import trueseam.geometry.join.Joining;

/**
 * A one-piece sleeve: a cap solved to its armhole, a seam that tapers to elbow and wrist alike in front and at the back.
 * Crown above the origin, the line from underarm to underarm at height 0, the front to the right.
 */
final class SleeveDraft {

    private static final String NAME = "sleeve";

    private final double armMm;
    private final double elbowMm;
    private final double wristMm;
    private final double lengthMm;
    private final double toElbowMm;

    private final Cap cap;
    private double lean = 0.1; // of the seam at the underarm, as a slope
    private double wristWidth; // straight across
    private double wristDrop; // of its ends below the place under the crown
    private Path frontSeam; // from the wrist to the underarm
    private Path backSeam; // the same, at the back
    private Path wrist; // from back to front

    private SleeveDraft(UpperPlan.Sum sum, double frontCapMm, double backCapMm) {
        armMm = sum.of(Measure.UPPER_ARM_GIRTH);
        elbowMm = sum.of(Measure.ELBOW_GIRTH);
        wristMm = sum.of(Measure.WRIST_GIRTH);
        lengthMm = sum.of(Measure.ARM_LENGTH);
        toElbowMm = sum.of(Measure.UPPER_ARM_LENGTH);
        cap = new Cap(armMm, frontCapMm, backCapMm);
        wristWidth = wristMm;
    }

    /** The width that the sleeve has at the underarm, mm. */
    static double widthMm(UpperPlan.Sum sum) {
        return sum.of(Measure.UPPER_ARM_GIRTH);
    }

    /**
     * A sleeve for an armhole.
     *
     * @param shell what it belongs to
     * @param sum figure and ease
     * @param frontCapMm wanted length of the front half of the cap
     * @param backCapMm wanted length of the back half
     * @throws DraftException if no cap of these lengths reaches over the arm
     */
    static SleeveDraft of(String shell, UpperPlan.Sum sum, double frontCapMm, double backCapMm) {
        SleeveDraft draft = new SleeveDraft(sum, frontCapMm, backCapMm);
        Settling.of(draft::round, shell, Measure.UPPER_ARM_GIRTH);
        return draft;
    }

    private double round(double share) {
        double capMiss = cap.round(lean);
        if (Double.isNaN(capMiss)) {
            return capMiss;
        }
        double wristY = cap.crown().y() - lengthMm - wristDrop;
        double elbowY = cap.crown().y() - toElbowMm;
        frontSeam = seam(cap.frontUnderarm(), elbowY, wristY);
        backSeam = Mirror.of(seam(Mirror.of(cap.backUnderarm()), elbowY, wristY));
        Vec back = backSeam.startTangent().right();
        Vec front = frontSeam.startTangent().right();
        wrist = Path.of(Joining.smooth(backSeam.start(), back, frontSeam.start(), front));
        Vec top = frontSeam.endTangent();
        double leanMiss = top.x() / top.y() - lean;
        double widthMiss = wristMm - wrist.length();
        double edgeY =
                wrist.crossings(Point.ORIGIN, new Vec(0, 1)).get(0).point().y();
        double lengthMiss = cap.crown().y() - edgeY - lengthMm;
        lean += share * leanMiss;
        wristWidth += share * widthMiss;
        wristDrop -= share * lengthMiss;
        double seamMiss = Math.max(100 * Math.abs(leanMiss), Math.max(Math.abs(widthMiss), Math.abs(lengthMiss)));
        return Math.max(capMiss, seamMiss);
    }

    private Path seam(Point underarm, double elbowY, double wristY) {
        Point elbow = new Point(underarm.x() - (armMm - elbowMm) / 2, elbowY);
        Point end = new Point(underarm.x() - (armMm - wristWidth) / 2, wristY);
        Vec at = elbow.minus(end).unit().plus(underarm.minus(elbow).unit());
        return Path.of(Joining.tangentToEnd(end, elbow, at), Joining.tangentFromStart(elbow, at, underarm));
    }

    /**
     * The piece.
     *
     * @param allowances around it
     * @param frontNotchMm of the armhole's front notch from the underarm
     * @param backNotchMm of the armhole's back notch from the underarm
     */
    Piece piece(Allowances allowances, double frontNotchMm, double backNotchMm) {
        double seam = allowances.seamMm();
        PieceBuilder piece = below(new PieceBuilder(NAME, PieceKind.SLEEVE), allowances)
                .edge("cap front", EdgeRole.CAP, cap.front(), seam)
                .edge("cap back", EdgeRole.CAP, cap.back(), seam)
                .notch("cap front", frontNotchMm, Notch.Kind.SINGLE)
                .notch("cap front", cap.front().length(), Notch.Kind.SINGLE)
                .notch("cap back", cap.back().length() - backNotchMm, Notch.Kind.DOUBLE);
        return closed(piece, allowances);
    }

    Cap cap() {
        return cap;
    }

    /** Begins a piece with the wrist and the front seam. */
    PieceBuilder below(PieceBuilder piece, Allowances allowances) {
        return piece.cut(2)
                .edge("wrist", EdgeRole.WRIST, wrist, allowances.hemMm())
                .edge("underarm front", EdgeRole.UNDERARM, frontSeam, allowances.seamMm())
                .notch("underarm front", frontSeam.segments().get(0).length(), Notch.Kind.SINGLE);
    }

    /** Ends a piece with the back seam, once it has its upper edges. */
    Piece closed(PieceBuilder piece, Allowances allowances) {
        double elbowY = cap.crown().y() - toElbowMm;
        double wristY = wrist.start().y();
        double elbowAlong = frontSeam.segments().get(0).length();
        return piece.edge("underarm back", EdgeRole.UNDERARM, backSeam.reversed(), allowances.seamMm())
                .notch("underarm back", backSeam.length() - elbowAlong, Notch.Kind.SINGLE)
                .level(LevelName.BICEP, 0)
                .level(LevelName.ABOVE_ELBOW, elbowY / 2)
                .level(LevelName.ELBOW, elbowY)
                .level(LevelName.BELOW_ELBOW, (elbowY + wristY) / 2)
                .grain(new Grain(
                        new Point(0, wristY + 0.2 * (cap.crown().y() - wristY)),
                        new Point(0, wristY + 0.8 * (cap.crown().y() - wristY))))
                .build();
    }
}
