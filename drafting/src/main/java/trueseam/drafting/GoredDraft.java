package trueseam.drafting;

import java.util.List;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;
import trueseam.geometry.join.Joining;

/**
 * A skirt of six gores: centre front, two side fronts, centre back, two side backs. The waist shaping lies in the six seams, and
 * below the hip every seam edge swings out by the same flare.
 *
 * <pre>{@code
 *     ____   _____.W      Both edges of a seam are mirror images, so they walk; at the waist they
 *    |    \ /     \       stand square to it. At the hip they lean as the flare does.
 *    |     |H     |H
 *    |    / \      \
 *    |___/   \______\
 * }</pre>
 *
 * A working object of one draft, on one thread.
 */
final class GoredDraft {

    private static final String SHELL = "gored skirt";
    private static final double FRONT_WIDER_MM = 6.35; // common practice: the side lies behind the middle
    private static final double BACK_LOWER_MM = 6.35; // common practice: the waist dips at the back by 1/4 in
    private static final double SEAM_SHARE = 0.5; // the seam beside the centre, of the way to the side at the hip
    private static final double FRONT_SHARE = 0.2; // of the shaping of the half skirt, in the seam beside centre front
    private static final double BACK_SHARE = 0.36; // the seat is rounder than the abdomen
    private static final double WIDEST_SHARE = 0.3; // of the hip depth, as one seam's intake; the side takes the rest
    private static final double RISE_SHARE = 0.12; // of the hip depth at most, or the side gets a point
    private static final double CURVE_SHARE = 0.2; // straighter above than an even curve
    private final double flareMm;
    private final double waistHalf;
    private final double frontHip;
    private final double backHip;
    private final double toHip;
    private final double length;
    private final double frontIntake;
    private final double backIntake;

    private double sideIn;
    private double sideY = 12;
    private double hipY;
    private Half front;
    private Half back;
    private double drawnHipY;

    /**
     * Front or back as drawn in one round, in coordinates with the centre at 0.
     *
     * @param seamX of the seam at the hip
     * @param sideX of the side at the hip
     * @param centreY of the waist at the centre
     * @param seam edge of the centre gore from hip to waist
     * @param side from hip to waist
     * @param inner waist of the centre gore, from the centre
     * @param outer waist of the side gore, to the side
     */
    private record Half(double seamX, double sideX, double centreY, Path seam, Path side, Path inner, Path outer) {
        double waistMm() {
            return inner.length() + outer.length();
        }
    }

    private GoredDraft(DraftFigure figure, DraftEase ease, double flareMm) {
        UpperPlan.Sum sum = new UpperPlan.Sum(GarmentKind.SKIRT, figure, ease);
        this.flareMm = flareMm;
        waistHalf = sum.of(Measure.WAIST_GIRTH) / 2;
        double hip = sum.of(Measure.HIP_GIRTH) / 4;
        frontHip = hip + FRONT_WIDER_MM;
        backHip = hip - FRONT_WIDER_MM;
        toHip = sum.of(Measure.WAIST_TO_HIP);
        length = sum.of(Measure.SKIRT_LENGTH);
        double shaping = 2 * hip - waistHalf;
        frontIntake = Math.max(0, Math.min(FRONT_SHARE * shaping, WIDEST_SHARE * toHip));
        backIntake = Math.max(0, Math.min(BACK_SHARE * shaping, WIDEST_SHARE * toHip));
        sideIn = (shaping - frontIntake - backIntake) / 2;
        hipY = -toHip + sideY;
    }

    /**
     * Drafts a gored skirt.
     *
     * @param figure whom for
     * @param ease how much larger
     * @param flareMm how far every seam edge swings out from hip to hem, mm
     */
    static GoredDraft of(DraftFigure figure, DraftEase ease, double flareMm) {
        GoredDraft draft = new GoredDraft(figure, ease, flareMm);
        Settling.of(draft::round, SHELL, Measure.WAIST_TO_HIP);
        SkirtDraft.requireBelowHip(SHELL, draft.length, draft.drawnHipY);
        return draft;
    }

    private double round(double share) {
        drawnHipY = hipY;
        front = half(frontHip, 0, frontIntake);
        back = half(backHip, -BACK_LOWER_MM, backIntake);
        double waistMiss = waistHalf - front.waistMm() - back.waistMm();
        double rise = Math.min((sideHeight(front) + sideHeight(back)) / 2, RISE_SHARE * toHip);
        double riseMiss = rise - sideY;
        double hipMiss = toHip - front.side().length();
        sideIn -= share * waistMiss / 2;
        sideY += share * riseMiss;
        hipY -= share * hipMiss;
        return Math.max(Math.abs(waistMiss), Math.max(Math.abs(riseMiss), Math.abs(hipMiss)));
    }

    private Half half(double hip, double centreY, double intake) {
        double seamX = SEAM_SHARE * hip;
        Path side = edge(new Point(hip, hipY), new Point(hip - sideIn, sideY));
        double legX = seamX - intake / 2;
        double legY = centreY;
        Path seam = edge(new Point(seamX, hipY), new Point(legX, legY));
        for (int i = 0; i < 3; i++) { // where the waist comes to lie depends a little on how the seam leans
            legY = centreY + legX * Math.tan(seam.endTangent().right().angle() / 2);
            seam = edge(new Point(seamX, hipY), new Point(legX, legY));
        }
        Vec arriving = seam.endTangent().right();
        Vec leaving = new Vec(arriving.x(), -arriving.y());
        Point outerLeg = new Point(seamX + intake / 2, legY);
        return new Half(
                seamX,
                hip,
                centreY,
                seam,
                side,
                Path.of(Joining.smooth(new Point(0, centreY), new Vec(1, 0), seam.end(), arriving)),
                Path.of(Joining.smooth(
                        outerLeg, leaving, side.end(), side.endTangent().right())));
    }

    /** From the hip, where it leans as the flare does, to the waist. */
    private Path edge(Point hip, Point waist) {
        Vec up = new Vec(-flareMm, length + hipY).unit();
        Vec chord = waist.minus(hip);
        return Path.of(Joining.smooth(hip, up, waist, chord.turned(CURVE_SHARE * up.angleTo(chord))));
    }

    /** How high the side comes to lie if the waist of the side gore bends no more than it must. */
    private static double sideHeight(Half half) {
        Point leg = half.outer().start();
        double leaving = half.outer().startTangent().angle();
        double arriving = half.side().endTangent().right().angle();
        return leg.y() + (half.side().end().x() - leg.x()) * Math.tan((leaving + arriving) / 2);
    }

    private double hemRise() {
        double lean = Math.atan2(flareMm, length + drawnHipY);
        // A gore's hem is an arc square to its edges; all seams get the height of the middling one.
        return (frontHip + backHip) / 4 * Math.tan(lean / 2);
    }

    private Path below(double hipX) {
        double rise = hemRise();
        double drop = length + drawnHipY;
        Point hem = new Point(hipX + flareMm * (drop - rise) / drop, -length + rise);
        return Path.of(new Line(hem, new Point(hipX, drawnHipY)));
    }

    Piece centreGore(boolean isFront, Allowances allowances) {
        Half half = isFront ? front : back;
        String which = isFront ? "front" : "back";
        Path panel = below(half.seamX()).then(half.seam());
        Point foot = new Point(0, -length);
        Path hem = Path.of(Joining.smooth(
                foot, new Vec(1, 0), panel.start(), panel.startTangent().right()));
        String centre = "centre " + which;
        return levels(new PieceBuilder(
                                "skirt centre " + which,
                                isFront ? PieceKind.SKIRT_CENTRE_FRONT : PieceKind.SKIRT_CENTRE_BACK)
                        .edge("hem", EdgeRole.HEM, hem, allowances.hemMm())
                        .edge("panel", EdgeRole.PANEL, panel, allowances.seamMm())
                        .edge("waist", EdgeRole.WAIST, half.inner().reversed(), allowances.seamMm())
                        .edge(centre, EdgeRole.CENTRE, Path.through(new Point(0, half.centreY()), foot), 0)
                        .onFold(centre)
                        .notch("panel", panel.length() - half.seam().length(), notch(isFront)))
                .grain(UpperPieces.grain(0.5 * half.seamX(), -length, 0))
                .build();
    }

    Piece sideGore(boolean isFront, Allowances allowances) {
        Half half = isFront ? front : back;
        String which = isFront ? "front" : "back";
        Path side = below(half.sideX()).then(half.side());
        Path panel = mirrored(below(half.seamX()).then(half.seam()), half.seamX());
        Path hem = Path.of(Joining.smooth(
                panel.start(),
                panel.startTangent().right(),
                side.start(),
                side.startTangent().right()));
        return levels(new PieceBuilder(
                                "skirt side " + which, isFront ? PieceKind.SKIRT_SIDE_FRONT : PieceKind.SKIRT_SIDE_BACK)
                        .cut(2)
                        .edge("hem", EdgeRole.HEM, hem, allowances.hemMm())
                        .edge("side", EdgeRole.SIDE, side, allowances.seamMm())
                        .edge("waist", EdgeRole.WAIST, half.outer().reversed(), allowances.seamMm())
                        .edge("panel", EdgeRole.PANEL, panel.reversed(), allowances.seamMm())
                        .notch("side", side.length() - half.side().length(), notch(isFront))
                        .notch("panel", half.seam().length(), notch(isFront)))
                .grain(UpperPieces.grain((half.seamX() + half.sideX()) / 2, -length, 0))
                .build();
    }

    private static Notch.Kind notch(boolean isFront) {
        return isFront ? Notch.Kind.SINGLE : Notch.Kind.DOUBLE;
    }

    private PieceBuilder levels(PieceBuilder piece) {
        return piece.level(LevelName.HIP, drawnHipY)
                .level(LevelName.SKIRT_LENGTH, SkirtDraft.lengthLine(drawnHipY, -length));
    }

    /** The mirror image at an upright line. */
    static Path mirrored(Path path, double x) {
        return Mirror.of(path).moved(Motion.slide(new Vec(2 * x, 0)));
    }

    static List<Seam> seams() {
        return List.of(
                Seam.of(
                        "front panel",
                        new EdgeRef("skirt centre front", "panel"),
                        new EdgeRef("skirt side front", "panel"),
                        0),
                Seam.of("side", new EdgeRef("skirt side front", "side"), new EdgeRef("skirt side back", "side"), 0),
                Seam.of(
                        "back panel",
                        new EdgeRef("skirt centre back", "panel"),
                        new EdgeRef("skirt side back", "panel"),
                        0));
    }
}
