package trueseam.drafting;

import java.util.List;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A kimono bodice: front and back with the sleeve cut in one. The armhole's depth is solved so that the sleeve clears the upper arm, the
 * place of the side seam so that the seams under the arm are of one length; bust, waist, neck and shoulder are those of the fitted bodice.
 *
 * <p>Source: common practice (the shoulder line carried on to the wrist, the underarm two to three inches below that of a set-in
 * sleeve, the side seam moved forward so that front and back sleeve match).
 */
final class KimonoDraft {

    private static final String SHELL = "kimono";
    private static final double SETTLED_MM = 1e-6;

    /** How far the curve under the arm rises from the side into the sleeve, about: our choice, an inch and a half. */
    private static final double RISE_MM = 38.1;

    private static final double FIRST_DEEPER_MM = 60;
    private static final double FIRST_FORWARD_MM = 12;

    private final UpperDraft draft;
    private final KimonoSleeve front;
    private final KimonoSleeve back;
    private final double toElbowMm;

    private KimonoDraft(UpperPlan plan, double deeper, UpperPlan.Sum sum) {
        draft = new UpperDraft(plan, false);
        draft.roughly(deeper);
        draft.exactly();
        front = new KimonoSleeve(
                draft.frontShoulder,
                draft.frontUnderarm(),
                draft.frontClosedSide().tangent(1));
        back = new KimonoSleeve(
                draft.backShoulder, draft.backUnderarm(), draft.backSide().tangent(1));
        toElbowMm = sum.of(Measure.UPPER_ARM_LENGTH);
        double arm = sum.of(Measure.UPPER_ARM_GIRTH) / 2;
        double wrist = sum.of(Measure.WRIST_GIRTH) / 2;
        double length = sum.of(Measure.ARM_LENGTH);
        double more = (front.depthMm() - back.depthMm()) / 2;
        front.draw(arm + more, wrist, length);
        back.draw(arm - more, wrist, length);
    }

    /**
     * Drafts a kimono bodice.
     *
     * @param figure whom for
     * @param ease how much larger
     * @throws DraftException if no armhole within the bodice clears the upper arm
     */
    static KimonoDraft of(DraftFigure figure, DraftEase ease) {
        UpperPlan wanted = UpperPlan.of(SHELL, GarmentKind.BODICE, figure, ease);
        UpperPlan.Sum sum = new UpperPlan.Sum(GarmentKind.BODICE, figure, ease);
        double[] moved = {FIRST_FORWARD_MM, FIRST_DEEPER_MM};
        KimonoDraft[] drawn = new KimonoDraft[1];
        Settling.within(
                SETTLED_MM,
                share -> {
                    KimonoDraft kimono = new KimonoDraft(wanted.withSideForward(moved[0]), moved[1], sum);
                    drawn[0] = kimono;
                    double depth = kimono.front.depthMm() + kimono.back.depthMm();
                    double depthMiss = sum.of(Measure.UPPER_ARM_GIRTH) + 2 * RISE_MM - depth;
                    double seamMiss = kimono.front.underarm().length()
                            - kimono.back.underarm().length();
                    moved[0] -= share * seamMiss / 2;
                    moved[1] += share * depthMiss / 2;
                    return Math.max(Math.abs(depthMiss), Math.abs(seamMiss));
                },
                SHELL,
                Measure.UPPER_ARM_GIRTH);
        return drawn[0];
    }

    Piece front(Allowances allowances) {
        UpperPieces pieces = new UpperPieces(draft, draft.plan(), allowances);
        UpperDraft.OpenSide side = draft.frontSide();
        PieceBuilder piece = pieces.frontToUnderarm("kimono front", PieceKind.KIMONO_FRONT, side);
        upper(piece, front, draft.frontShoulder, draft.frontNeck, "centre front", Notch.Kind.SINGLE, allowances);
        return pieces.frontWithin(
                piece, side, draft.frontShoulder.shoulderPoint().y());
    }

    Piece back(Allowances allowances) {
        UpperPieces pieces = new UpperPieces(draft, draft.plan(), allowances);
        PieceBuilder piece = pieces.backToUnderarm("kimono back", PieceKind.KIMONO_BACK);
        upper(piece, back, draft.backShoulder, draft.backNeck, "centre back", Notch.Kind.DOUBLE, allowances);
        return pieces.backWithin(piece);
    }

    private void upper(
            PieceBuilder piece,
            KimonoSleeve sleeve,
            ShoulderLine shoulder,
            Path neck,
            String centre,
            Notch.Kind notch,
            Allowances allowances) {
        double seam = allowances.seamMm();
        double beyondElbow = sleeve.overarm().length() - toElbowMm;
        piece.edge("underarm", EdgeRole.UNDERARM, sleeve.underarm(), seam)
                .edge("wrist", EdgeRole.WRIST, sleeve.wrist(), allowances.hemMm())
                .edge("overarm", EdgeRole.OVERARM, sleeve.overarm(), seam)
                .edge("shoulder", EdgeRole.SHOULDER, shoulder.path(), seam)
                .edge("neck", EdgeRole.NECK, neck, seam)
                .edge(centre, EdgeRole.CENTRE, Path.through(neck.end(), Point.ORIGIN), 0)
                .onFold(centre)
                .notch("underarm", sleeve.underarm().length() - beyondElbow, notch)
                .notch("overarm", beyondElbow, notch)
                .notch("overarm", sleeve.overarm().length(), notch);
    }

    static List<Seam> seams(DraftEase ease) {
        return List.of(
                seam("shoulder", ease.backShoulderMm()), seam("overarm", 0), seam("underarm", 0), seam("side", 0));
    }

    private static Seam seam(String edge, double easeMm) {
        return Seam.of(edge, new EdgeRef("kimono front", edge), new EdgeRef("kimono back", edge), easeMm);
    }
}
