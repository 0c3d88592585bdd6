package trueseam.drafting;

import java.util.List;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A sleeve of two pieces: a cap solved to its armhole is cut upright in front and at the back, and what is cut off is joined under
 * the arm to the under sleeve.
 *
 * <pre>{@code
 *        _ crown _
 *      /           \         .     .    The edges of either seam are mirror images, so they walk.
 *     |             |        |\_ _/|    The back seam takes more of the wrist than the front seam,
 *     |   upper     |        |  0  |    so the sleeve bends forward as the arm does.
 *   back          front    front  back
 * }</pre>
 *
 * A working object of one draft, on one thread.
 */
final class TwoPieceSleeveDraft {

    private static final double FRONT_CUT = 0.62; // of the half cap's width, from the crown
    private static final double BACK_CUT = 0.68; // the back seam lies farther round: it is not to be seen
    private static final double FRONT_ELBOW_SHARE = 0.5;
    private static final double FRONT_WRIST_SHARE = 0.36;
    private static final Vec UP = new Vec(0, 1);

    private final double armMm;
    private final double elbowMm;
    private final double wristMm;
    private final double lengthMm;
    private final double toElbowMm;
    private final Cap cap;

    private double wristWidth; // straight across both pieces
    private double wristDrop;
    private double frontCutMm; // along the front cap, from the underarm
    private double backCutMm; // along the back cap, from the crown
    private Path frontSeam; // of the upper sleeve, from wrist to cap
    private Path backSeam;
    private Path underFrontSeam;
    private Path underBackSeam;
    private Path upperWrist;
    private Path underWrist;

    private TwoPieceSleeveDraft(UpperPlan.Sum sum, double frontCapMm, double backCapMm) {
        armMm = sum.of(Measure.UPPER_ARM_GIRTH);
        elbowMm = sum.of(Measure.ELBOW_GIRTH);
        wristMm = sum.of(Measure.WRIST_GIRTH);
        lengthMm = sum.of(Measure.ARM_LENGTH);
        toElbowMm = sum.of(Measure.UPPER_ARM_LENGTH);
        cap = new Cap(armMm, frontCapMm, backCapMm);
        wristWidth = wristMm;
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
    static TwoPieceSleeveDraft of(String shell, UpperPlan.Sum sum, double frontCapMm, double backCapMm) {
        TwoPieceSleeveDraft draft = new TwoPieceSleeveDraft(sum, frontCapMm, backCapMm);
        Settling.of(draft::round, shell, Measure.UPPER_ARM_GIRTH);
        return draft;
    }

    private double round(double share) {
        double capMiss = cap.round(0);
        if (Double.isNaN(capMiss)) {
            return capMiss;
        }
        double frontX = FRONT_CUT * cap.frontUnderarm().x();
        double backX = BACK_CUT * cap.backUnderarm().x();
        PathPlace front = at(cap.front(), frontX);
        PathPlace back = at(cap.back(), backX);
        frontCutMm = front.alongMm();
        backCutMm = back.alongMm();
        double elbowIn = (armMm - elbowMm) / 2;
        double wristIn = (armMm - wristWidth) / 2;
        frontSeam = seam(front.point(), FRONT_ELBOW_SHARE * elbowIn, FRONT_WRIST_SHARE * wristIn, -1);
        backSeam = seam(back.point(), (1 - FRONT_ELBOW_SHARE) * elbowIn, (1 - FRONT_WRIST_SHARE) * wristIn, 1);
        underFrontSeam = GoredDraft.mirrored(frontSeam, frontX).moved(under(true));
        underBackSeam = GoredDraft.mirrored(backSeam, backX).moved(under(false));
        upperWrist = square(backSeam, frontSeam);
        underWrist = square(underFrontSeam, underBackSeam);
        double widthMiss = wristMm - upperWrist.length() - underWrist.length();
        double edgeY = upperWrist.crossings(Point.ORIGIN, UP).get(0).point().y();
        double lengthMiss = cap.crown().y() - edgeY - lengthMm;
        wristWidth += share * widthMiss;
        wristDrop -= share * lengthMiss;
        return Math.max(capMiss, Math.max(Math.abs(widthMiss), Math.abs(lengthMiss)));
    }

    private static PathPlace at(Path half, double x) {
        return half.crossings(new Point(x, 0), UP).get(0);
    }

    private static Path square(Path left, Path right) {
        return Path.of(Joining.smooth(
                left.start(),
                left.startTangent().right(),
                right.start(),
                right.startTangent().right()));
    }

    /** Front and back underarm point are one point of the under sleeve. */
    private Motion under(boolean isFront) {
        return Motion.slide(new Vec(-(isFront ? cap.frontUnderarm() : cap.backUnderarm()).x(), 0));
    }

    private double elbowY() {
        return cap.crown().y() - toElbowMm;
    }

    private double wristY() {
        return cap.crown().y() - lengthMm - wristDrop;
    }

    /** From the wrist over the elbow to the upper arm, and upright to the cap. */
    private Path seam(Point top, double elbowIn, double wristIn, double inward) {
        Point arm = new Point(top.x(), 0);
        Point elbow = new Point(top.x() + inward * elbowIn, elbowY());
        Point wrist = new Point(top.x() + inward * wristIn, wristY());
        Vec at = elbow.minus(wrist).unit().plus(arm.minus(elbow).unit());
        return Path.of(Joining.tangentToEnd(wrist, elbow, at), Joining.smooth(elbow, at, arm, UP), new Line(arm, top));
    }

    Piece upper(Allowances allowances, double frontNotchMm, double backNotchMm) {
        double seam = allowances.seamMm();
        Path capFront = cap.front().part(frontCutMm, cap.front().length());
        Path capBack = cap.back().part(0, backCutMm);
        PieceBuilder piece = new PieceBuilder("upper sleeve", PieceKind.UPPER_SLEEVE)
                .cut(2)
                .edge("wrist", EdgeRole.WRIST, upperWrist, allowances.hemMm())
                .edge("front seam", EdgeRole.PANEL, frontSeam, seam)
                .edge("cap front", EdgeRole.CAP, capFront, seam)
                .edge("cap back", EdgeRole.CAP, capBack, seam)
                .edge("back seam", EdgeRole.PANEL, backSeam.reversed(), seam)
                .notch("front seam", frontSeam.startOf(1), Notch.Kind.SINGLE)
                .notch("back seam", backSeam.length() - backSeam.startOf(1), Notch.Kind.DOUBLE)
                .notch("cap front", capFront.length(), Notch.Kind.SINGLE);
        if (frontNotchMm > frontCutMm) {
            piece.notch("cap front", frontNotchMm - frontCutMm, Notch.Kind.SINGLE);
        }
        double backNotch = cap.back().length() - backNotchMm;
        if (backNotch < backCutMm) {
            piece.notch("cap back", backNotch, Notch.Kind.DOUBLE);
        }
        return finished(piece, 0);
    }

    Piece under(Allowances allowances, double frontNotchMm, double backNotchMm) {
        double seam = allowances.seamMm();
        Path back = cap.back().part(backCutMm, cap.back().length()).moved(under(false));
        Path front = cap.front().part(0, frontCutMm).moved(under(true));
        PieceBuilder piece = new PieceBuilder("under sleeve", PieceKind.UNDER_SLEEVE)
                .cut(2)
                .edge("wrist", EdgeRole.WRIST, underWrist, allowances.hemMm())
                .edge("back seam", EdgeRole.PANEL, underBackSeam, seam)
                .edge("cap under", EdgeRole.CAP, back.then(front), seam)
                .edge("front seam", EdgeRole.PANEL, underFrontSeam.reversed(), seam)
                .notch("back seam", underBackSeam.startOf(1), Notch.Kind.DOUBLE)
                .notch("front seam", underFrontSeam.length() - underFrontSeam.startOf(1), Notch.Kind.SINGLE)
                .notch("cap under", back.length(), Notch.Kind.SINGLE);
        if (frontNotchMm < frontCutMm) {
            piece.notch("cap under", back.length() + frontNotchMm, Notch.Kind.SINGLE);
        }
        if (backNotchMm < back.length()) {
            piece.notch("cap under", back.length() - backNotchMm, Notch.Kind.DOUBLE);
        }
        return finished(piece, (underWrist.start().x() + underWrist.end().x()) / 2);
    }

    private Piece finished(PieceBuilder piece, double grainX) {
        double height = -wristY();
        return piece.level(LevelName.BICEP, 0)
                .level(LevelName.ABOVE_ELBOW, elbowY() / 2)
                .level(LevelName.ELBOW, elbowY())
                .level(LevelName.BELOW_ELBOW, (elbowY() + wristY()) / 2)
                .grain(new Grain(
                        new Point(grainX, wristY() + 0.2 * height), new Point(grainX, wristY() + 0.9 * height)))
                .build();
    }

    static List<Seam> seams(DraftEase ease) {
        return List.of(
                Seam.of(
                        "sleeve front",
                        new EdgeRef("upper sleeve", "front seam"),
                        new EdgeRef("under sleeve", "front seam"),
                        0),
                Seam.of(
                        "sleeve back",
                        new EdgeRef("upper sleeve", "back seam"),
                        new EdgeRef("under sleeve", "back seam"),
                        0),
                new Seam(
                        "armhole",
                        List.of(new EdgeRef("bodice back", "armhole"), new EdgeRef("bodice front", "armhole")),
                        List.of(
                                new EdgeRef("upper sleeve", "cap back"),
                                new EdgeRef("upper sleeve", "cap front"),
                                new EdgeRef("under sleeve", "cap under")),
                        ease.capMm()));
    }
}
