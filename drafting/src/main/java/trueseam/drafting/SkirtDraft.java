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
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A straight skirt. Its side seams are the same line in front and at the back, so they walk whatever the waist takes: the
 * darts take what differs.
 *
 * <pre>{@code
 *     ___/\____.W       y = 0 at the centre front waist. The side rises to W, the back
 *    |          \       centre lies a little lower. From the hip H down it hangs straight.
 *    |           |H
 *    |           |
 * }</pre>
 */
final class SkirtDraft {

    private static final String SHELL = "skirt";
    private static final double FRONT_WIDER_MM = 6.35; // common practice: the side lies behind the middle
    private static final double BACK_LOWER_MM = 6.35; // common practice: the waist dips at the back by 1/4 in
    private static final double SIDE_SHARE = 0.52; // of the shaping of the front
    private static final double WIDEST_FRONT_DART_MM = 32;
    private static final double WIDEST_BACK_DARTS_MM = 56;

    /** Nor wider than this share of the hip depth: short wide darts pout, the side takes more instead. */
    private static final double WIDEST_FRONT_SHARE = 0.18;

    private static final double WIDEST_BACK_SHARE = 0.34;
    private static final double ONE_BACK_DART_MM = 22; // up to this one dart is enough
    private static final double SIDE_RISE_SHARE = 1;
    private static final double HIGHEST_RISE_SHARE =
            0.12; // of the hip depth, or a shallow hip gets a point at the side
    private static final double FRONT_DART_SHARE = 0.62; // of the hip depth
    private static final double BACK_DART_SHARE = 0.75;
    private static final double NOT_BELOW_SHARE = 0.8;
    private static final double CURVE_SHARE = 0.2;
    private static final double LEAST_BELOW_HIP_MM = 20;

    /** ND1921 in the trade notes: gored skirts are lengthened 6 in below the hip line. */
    static final double LENGTH_BELOW_HIP_MM = 152.4;

    private static final Vec UP = new Vec(0, 1);

    private final double waistHalf;
    private final double frontHip;
    private final double backHip;
    private final double toHip;
    private final double length;
    private final double frontDart;
    private final double backDarts;

    private double sideIn; // how much farther in the waist is than the hip, at the side
    private double sideY;
    private double hipY;

    private Cubic frontCurve; // from hip to waist
    private Cubic backCurve;
    private WaistLine frontWaist;
    private WaistLine backWaist;
    private double drawnHipY;

    private SkirtDraft(DraftFigure figure, DraftEase ease) {
        UpperPlan.Sum sum = new UpperPlan.Sum(GarmentKind.SKIRT, figure, ease);
        waistHalf = sum.of(Measure.WAIST_GIRTH) / 2;
        double hip = sum.of(Measure.HIP_GIRTH) / 4;
        frontHip = hip + FRONT_WIDER_MM;
        backHip = hip - FRONT_WIDER_MM;
        toHip = sum.of(Measure.WAIST_TO_HIP);
        length = sum.of(Measure.SKIRT_LENGTH);
        double shaping = hip - waistHalf / 2;
        double front = (1 - SIDE_SHARE) * shaping;
        // The seat is rounder than the abdomen: the back takes about half as much again.
        double back = 1.45 * front;
        frontDart = held(front, Math.min(WIDEST_FRONT_DART_MM, WIDEST_FRONT_SHARE * toHip));
        backDarts = held(back, Math.min(WIDEST_BACK_DARTS_MM, WIDEST_BACK_SHARE * toHip));
        sideIn = shaping - (frontDart + backDarts) / 2;
        sideY = 12;
        hipY = -toHip + sideY;
    }

    private static double held(double intakeMm, double widestMm) {
        return intakeMm < UpperDraft.LEAST_DART_MM ? 0 : Math.min(widestMm, intakeMm);
    }

    /**
     * Drafts a skirt.
     *
     * @param figure whom for
     * @param ease how much larger
     */
    static SkirtDraft of(DraftFigure figure, DraftEase ease) {
        SkirtDraft draft = new SkirtDraft(figure, ease);
        Settling.of(draft::round, SHELL, Measure.WAIST_TO_HIP);
        requireBelowHip(SHELL, draft.length, draft.drawnHipY);
        return draft;
    }

    /** A skirt has to reach below the hip line that it is fitted at. */
    static void requireBelowHip(String shell, double lengthMm, double hipY) {
        if (lengthMm + hipY < LEAST_BELOW_HIP_MM) {
            throw new DraftException(
                    shell,
                    Measure.SKIRT_LENGTH,
                    lengthMm,
                    LEAST_BELOW_HIP_MM - hipY,
                    "it has to reach below the hip line; choose a longer one");
        }
    }

    private double round(double share) {
        drawnHipY = hipY;
        frontCurve = curve(frontHip);
        backCurve = curve(backHip);
        Vec arriving = frontCurve.tangent(1).right();
        frontWaist = new WaistLine("waist", Point.ORIGIN);
        if (frontDart > 0) {
            frontWaist.dart("waist dart", new Point(0.5 * (frontHip - sideIn), apexY(FRONT_DART_SHARE)), frontDart);
        }
        backWaist = new WaistLine("waist", new Point(0, -BACK_LOWER_MM));
        sewBackDarts(backHip - sideIn);
        double evenly = (frontWaist.sideHeight(frontHip - sideIn, arriving, SIDE_RISE_SHARE)
                        + backWaist.sideHeight(backHip - sideIn, arriving, SIDE_RISE_SHARE))
                / 2;
        double rise = Math.min(evenly, HIGHEST_RISE_SHARE * toHip);
        frontWaist.side(frontCurve.end(), arriving);
        backWaist.side(backCurve.end(), arriving);
        double waistMiss = waistHalf - frontWaist.sewnMm() - backWaist.sewnMm();
        double riseMiss = rise - sideY;
        double hipMiss = toHip - frontCurve.length();
        sideIn -= share * waistMiss / 2;
        sideY += share * riseMiss;
        hipY -= share * hipMiss;
        return Math.max(Math.abs(waistMiss), Math.max(Math.abs(riseMiss), Math.abs(hipMiss)));
    }

    private Cubic curve(double hip) {
        Point level = new Point(hip, hipY);
        Point waist = new Point(hip - sideIn, sideY);
        Vec chord = waist.minus(level);
        // Straighter above than an even curve: the waist would come to a point at the side.
        return Joining.smooth(level, UP, waist, chord.turned(CURVE_SHARE * UP.angleTo(chord)));
    }

    /** Darts end above the hip, or they would take from its width. */
    private double apexY(double share) {
        return -Math.min(share * toHip, NOT_BELOW_SHARE * Math.abs(hipY));
    }

    private void sewBackDarts(double sideX) {
        double apexY = apexY(BACK_DART_SHARE);
        if (backDarts > ONE_BACK_DART_MM) {
            backWaist
                    .dart("inner waist dart", new Point(0.36 * sideX, apexY), 0.52 * backDarts)
                    .dart("outer waist dart", new Point(0.68 * sideX, 0.9 * apexY), 0.48 * backDarts);
        } else if (backDarts > 0) {
            backWaist.dart("waist dart", new Point(0.48 * sideX, apexY), backDarts);
        }
    }

    Piece front(Allowances allowances) {
        return piece("front", PieceKind.SKIRT_FRONT, frontHip, frontCurve, frontWaist, Notch.Kind.SINGLE, allowances);
    }

    Piece back(Allowances allowances) {
        return piece("back", PieceKind.SKIRT_BACK, backHip, backCurve, backWaist, Notch.Kind.DOUBLE, allowances);
    }

    private Piece piece(
            String which,
            PieceKind kind,
            double hip,
            Cubic curve,
            WaistLine waist,
            Notch.Kind notch,
            Allowances allowances) {
        String centre = "centre " + which;
        Line straight = new Line(new Point(hip, -length), curve.start());
        Path line = waist.path().reversed();
        PieceBuilder piece = new PieceBuilder("skirt " + which, kind)
                .edge("hem", EdgeRole.HEM, Path.through(new Point(0, -length), straight.start()), allowances.hemMm())
                .edge("side", EdgeRole.SIDE, Path.of(straight, curve), allowances.seamMm())
                .edge("waist", EdgeRole.WAIST, line, allowances.seamMm())
                .edge(centre, EdgeRole.CENTRE, Path.through(line.end(), new Point(0, -length)), 0)
                .onFold(centre)
                .notch("side", straight.length(), notch)
                .level(LevelName.HIP, drawnHipY)
                .level(LevelName.SKIRT_LENGTH, lengthLine(drawnHipY, -length))
                .grain(UpperPieces.grain(0.3 * hip, -length, 0));
        waist.dartsReversed().forEach(piece::dart);
        return piece.build();
    }

    /** 6 in below the hip, or half way to the hem where that is near. */
    static double lengthLine(double hipY, double hemY) {
        return hipY - Math.min(LENGTH_BELOW_HIP_MM, (hipY - hemY) / 2);
    }

    static List<Seam> seams() {
        return List.of(Seam.of("side", new EdgeRef("skirt front", "side"), new EdgeRef("skirt back", "side"), 0));
    }
}
