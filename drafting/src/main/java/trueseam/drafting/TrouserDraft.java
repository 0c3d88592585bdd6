package trueseam.drafting;

import java.util.List;
import trueseam.garment.ease.GarmentKind;
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
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * Trousers with a straight leg. Side seams are the same line in front and at the back; the crotch extensions are shares of
 * the hip, put right for the lengths of the crotch, and the waist at the centre is raised or dropped until these are
 * exact; the back crotch point is dropped until the inseams walk.
 */
final class TrouserDraft {

    private static final String SHELL = "trousers";
    private static final double BACK_WIDER_MM = 8; // each back is wider than each front by twice this
    private static final double BACK_LEG_WIDER_MM = 10;
    private static final double HEM_SHARE = 0.93; // of the knee: a straight leg
    private static final double LOWEST_HIP_MM = 30; // above the crotch level, so that the curve begins below the hip
    private static final double FRONT_EXTENSION_SHARE = 0.052; // of the hip, ease included: common practice about 1/20
    private static final double BACK_EXTENSION_SHARE = 0.105; // and about twice that
    private static final double SLANT_SHARE = 0.4; // of the shaping of the back
    private static final double LEAST_SLANT_MM = 8;
    private static final double WIDEST_SLANT_MM = 34;
    private static final double FRONT_DART_SHARE = 0.28;
    private static final double BACK_DART_SHARE = 0.36;
    private static final double WIDEST_FRONT_DART_MM = 25;
    private static final double WIDEST_BACK_DART_MM = 30;
    private static final double LEAST_CENTRE_MM = 25; // of straight centre seam above the crotch curve

    private static final int THIGH_ROUNDS = 5;
    private static final double THIGH_WITHIN_MM = 0.05;

    private final double waistHalf;
    private final double frontHip;
    private final double backHip;
    private final double rise;
    private final double toHip;
    private final double frontCrotch;
    private final double backCrotch;
    private final double inseam;
    private final double thigh;
    private final double knee;
    private final double kneeHeight;
    private final double frontDart;
    private final double backDart;
    private final double slantMm;

    private double frontExtension;
    private double backExtension;
    private double waistIn;
    private double hipY;
    private double hemY;
    private double frontCentreY;
    private double backCentreY;
    private double backPointY;

    private Leg front;
    private Leg back;
    private WaistLine frontWaist;
    private WaistLine backWaist;
    private double drawnHipY;
    private double drawnKneeY;

    private TrouserDraft(DraftFigure figure, DraftEase ease) {
        UpperPlan.Sum sum = new UpperPlan.Sum(GarmentKind.TROUSERS, figure, ease);
        waistHalf = sum.of(Measure.WAIST_GIRTH) / 2;
        double hip = sum.of(Measure.HIP_GIRTH);
        frontHip = hip / 4 - BACK_WIDER_MM;
        backHip = hip / 4 + BACK_WIDER_MM;
        rise = sum.of(Measure.BODY_RISE);
        toHip = sum.of(Measure.WAIST_TO_HIP);
        frontCrotch = sum.of(Measure.FRONT_CROTCH_LENGTH);
        backCrotch = sum.of(Measure.BACK_CROTCH_LENGTH);
        inseam = sum.of(Measure.INSIDE_LEG_LENGTH);
        thigh = sum.of(Measure.THIGH_GIRTH);
        knee = sum.of(Measure.KNEE_GIRTH);
        kneeHeight = figure.mm(Measure.KNEE_HEIGHT);

        double shaping = hip / 4 - waistHalf / 2;
        frontDart = dart(FRONT_DART_SHARE * shaping, WIDEST_FRONT_DART_MM);
        backDart = dart(BACK_DART_SHARE * shaping, WIDEST_BACK_DART_MM);
        slantMm = Math.max(LEAST_SLANT_MM, Math.min(WIDEST_SLANT_MM, SLANT_SHARE * shaping));
        waistIn = shaping - (frontDart + backDart + slantMm) / 2;
        hipY = Math.max(LOWEST_HIP_MM, rise - toHip);
        hemY = -inseam;
        frontCentreY = rise - 4;
        backCentreY = rise + 26;
        backPointY = -10;

        frontExtension = extension(FRONT_EXTENSION_SHARE * hip, frontCrotch, frontCentreY, 0.9, 2.3);
        backExtension = extension(BACK_EXTENSION_SHARE * hip, backCrotch, backCentreY, 0.8, 1.6);
    }

    private static double dart(double intakeMm, double widestMm) {
        return intakeMm < UpperDraft.LEAST_DART_MM ? 0 : Math.min(widestMm, intakeMm);
    }

    /**
     * The usual extension, put right by a share of what the crotch length lacks with it, but never to less than half of it
     * nor more than so many times. The length of the curve is guessed here; the raised or dropped waist makes it exact.
     */
    private static double extension(double usual, double crotch, double centreY, double share, double most) {
        double bend = 0.95 * usual;
        double lacking = crotch - (centreY - bend) - 0.8 * (usual + bend);
        return Math.max(0.5 * usual, Math.min(most * usual, usual + share * lacking));
    }

    /**
     * Drafts trousers.
     *
     * @param figure whom for
     * @param ease how much larger
     */
    static TrouserDraft of(DraftFigure figure, DraftEase ease) {
        TrouserDraft draft = new TrouserDraft(figure, ease);
        for (int i = 0; i < THIGH_ROUNDS; i++) {
            Settling.of(draft::round, SHELL, Measure.TOTAL_CROTCH_LENGTH);
            // A leg wider than the thigh needs is left so; one that is too narrow gets longer extensions.
            double lacking = draft.thigh - draft.front.widthAtCrotch() - draft.back.widthAtCrotch();
            if (lacking < THIGH_WITHIN_MM) {
                break;
            }
            draft.frontExtension += lacking / 2;
            draft.backExtension += lacking / 2;
        }
        draft.checkCentre(draft.front, Measure.FRONT_CROTCH_LENGTH, draft.frontCrotch);
        draft.checkCentre(draft.back, Measure.BACK_CROTCH_LENGTH, draft.backCrotch);
        return draft;
    }

    private void checkCentre(Leg leg, Measure measure, double crotchMm) {
        double straight = leg.crotch().start().y() - drawnHipY;
        if (straight < LEAST_CENTRE_MM) {
            throw new DraftException(
                    SHELL,
                    measure,
                    crotchMm,
                    crotchMm + LEAST_CENTRE_MM - straight,
                    "so short a crotch length would bring the waist below the hip at the centre; measure it and the body"
                            + " rise again");
        }
    }

    private double round(double share) {
        drawnHipY = hipY;
        drawnKneeY = hemY + kneeHeight;
        double frontKnee = knee / 2 - BACK_LEG_WIDER_MM;
        double backKnee = knee / 2 + BACK_LEG_WIDER_MM;
        // The crease of the front is in the middle of its width at the crotch level; the back's side seam goes like it.
        double frontKneeX = (frontHip - frontExtension) / 2 + frontKnee / 2;
        double backKneeX = backHip - (frontHip - frontKneeX);
        front = layout(frontHip, frontKneeX, frontKnee, frontExtension, 0, 0, frontCentreY);
        back = layout(backHip, backKneeX, backKnee, backExtension, backPointY, slantMm / (rise - hipY), backCentreY);
        drawWaists();
        double waistMiss = waistHalf - frontWaist.sewnMm() - backWaist.sewnMm();
        double hipMiss = toHip - front.sideCurve().length();
        double hipNext = Math.max(LOWEST_HIP_MM, hipY - share * hipMiss);
        double frontMiss = frontCrotch - front.crotch().length();
        double backMiss = backCrotch - back.crotch().length();
        double inseamMiss = inseam - front.inseam().length();
        double walkMiss = front.inseam().length() - back.inseam().length();
        double miss = Math.max(
                Math.max(Math.abs(waistMiss), Math.abs(hipNext - hipY) / share),
                Math.max(
                        Math.max(Math.abs(frontMiss), Math.abs(backMiss)),
                        Math.max(Math.abs(inseamMiss), Math.abs(walkMiss))));
        waistIn -= share * waistMiss / 2;
        hipY = hipNext;
        frontCentreY += share * frontMiss;
        backCentreY += share * backMiss;
        hemY -= share * inseamMiss;
        backPointY += share * walkMiss;
        return miss;
    }

    private Leg layout(
            double hip, double kneeX, double kneeWidth, double extension, double pointY, double slant, double centreY) {
        return new Leg.Layout(
                        hip,
                        hipY,
                        waistIn,
                        rise,
                        kneeX,
                        drawnKneeY,
                        kneeWidth,
                        kneeWidth - (1 - HEM_SHARE) * knee / 2,
                        hemY,
                        extension,
                        pointY,
                        slant,
                        centreY)
                .drawn();
    }

    private void drawWaists() {
        double depth = rise - hipY;
        frontWaist = new WaistLine("waist", front.crotch().start(), front.waistHeading());
        if (frontDart > 0) {
            frontWaist.dartBelow("waist dart", 0.5, front.side().end(), 0.6 * depth, frontDart);
        }
        frontWaist.side(front.side().end(), front.waistArriving());
        backWaist = new WaistLine("waist", back.crotch().start(), back.waistHeading());
        if (backDart > 0) {
            backWaist.dartBelow("waist dart", 0.52, back.side().end(), 0.72 * depth, backDart);
        }
        backWaist.side(back.side().end(), back.waistArriving());
    }

    Piece front(Allowances allowances) {
        return piece("trouser front", PieceKind.TROUSER_FRONT, front, frontWaist, Notch.Kind.SINGLE, allowances);
    }

    Piece back(Allowances allowances) {
        return piece("trouser back", PieceKind.TROUSER_BACK, back, backWaist, Notch.Kind.DOUBLE, allowances);
    }

    private Piece piece(
            String name, PieceKind kind, Leg leg, WaistLine waist, Notch.Kind notch, Allowances allowances) {
        double seam = allowances.seamMm();
        Path side = leg.side();
        double shin = side.segments().get(0).length();
        double toHipLine = side.length() - leg.sideCurve().length();
        double hem = leg.hem().start().y();
        PieceBuilder piece = new PieceBuilder(name, kind)
                .cut(2)
                .edge("hem", EdgeRole.HEM, leg.hem(), allowances.hemMm())
                .edge("side", EdgeRole.SIDE, side, seam)
                .edge("waist", EdgeRole.WAIST, waist.path().reversed(), seam)
                .edge("crotch", EdgeRole.CROTCH, leg.crotch(), seam)
                .edge("inseam", EdgeRole.INSEAM, leg.inseam(), seam)
                .notch("side", shin, notch)
                .notch("side", toHipLine, notch)
                .notch("inseam", leg.inseam().segments().get(0).length(), notch)
                .level(LevelName.HIP, drawnHipY)
                .level(LevelName.CROTCH_DEPTH, drawnHipY + 0.15 * (rise - drawnHipY))
                .level(LevelName.CROTCH, 0)
                .level(LevelName.ABOVE_KNEE, drawnKneeY / 2)
                .level(LevelName.KNEE, drawnKneeY)
                .level(LevelName.BELOW_KNEE, (drawnKneeY + hem) / 2)
                .grain(grain(leg, hem));
        waist.dartsReversed().forEach(piece::dart);
        return piece.build();
    }

    private Grain grain(Leg leg, double hem) {
        double height = rise - hem;
        return new Grain(new Point(leg.creaseX(), hem + 0.15 * height), new Point(leg.creaseX(), hem + 0.75 * height));
    }

    static List<Seam> seams() {
        return List.of(
                Seam.of("outseam", new EdgeRef("trouser front", "side"), new EdgeRef("trouser back", "side"), 0),
                Seam.of("inseam", new EdgeRef("trouser front", "inseam"), new EdgeRef("trouser back", "inseam"), 0));
    }
}
