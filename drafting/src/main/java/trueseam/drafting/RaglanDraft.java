package trueseam.drafting;

import java.util.List;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;

/**
 * A raglan bodice from a solved bodice and its sleeve: the shoulders are cut off front and back and laid against the cap; what opens
 * between them over the crown is a dart from the neck to the shoulder point.
 *
 * <p>Source: common practice. Nothing is eased into a raglan seam, so the cap is drafted without ease; the seam meets the neck an inch
 * from the neck point at the back and an inch and a quarter in front.
 */
final class RaglanDraft {

    private static final String SHELL = "raglan";
    private static final double FRONT_IN_NECK_MM = 31.75; // 1 1/4 in
    private static final double BACK_IN_NECK_MM = 25.4; // 1 in
    private static final String DART = "shoulder dart";

    private final UpperDraft draft;
    private final SleeveDraft sleeve;
    private final RaglanSeam front; // drawn on the front turned over, as the sleeve has its front to the right
    private final RaglanSeam back;

    private RaglanDraft(Upper upper) {
        draft = upper.draft();
        sleeve = upper.sleeve();
        front = new RaglanSeam(SHELL, draft.frontArmhole(), draft.frontShoulder, draft.frontNeck, FRONT_IN_NECK_MM);
        back = new RaglanSeam(SHELL, draft.backArmhole(), draft.backShoulder, draft.backNeck, BACK_IN_NECK_MM);
    }

    /**
     * Drafts a raglan bodice.
     *
     * @param figure whom for
     * @param ease how much larger; nothing is eased into cap and shoulder
     */
    static RaglanDraft of(DraftFigure figure, DraftEase ease) {
        DraftEase plain = new DraftEase(ease.chosenMm(), 0, 0);
        UpperPlan plan = UpperPlan.of(SHELL, GarmentKind.BODICE, figure, plain);
        return new RaglanDraft(Upper.of(new UpperDraft(plan, false), GarmentKind.BODICE, figure, plain));
    }

    Piece front(Allowances allowances) {
        UpperPieces pieces = new UpperPieces(draft, draft.plan(), allowances);
        UpperDraft.OpenSide side = draft.frontSide();
        PieceBuilder piece = pieces.frontToUnderarm("raglan front", PieceKind.RAGLAN_FRONT, side);
        upper(piece, front, "centre front", Notch.Kind.SINGLE, allowances);
        return pieces.frontWithin(piece, side, draft.frontUnderarm().y());
    }

    Piece back(Allowances allowances) {
        UpperPieces pieces = new UpperPieces(draft, draft.plan(), allowances);
        PieceBuilder piece = pieces.backToUnderarm("raglan back", PieceKind.RAGLAN_BACK);
        upper(piece, back, "centre back", Notch.Kind.DOUBLE, allowances);
        return pieces.backWithin(piece);
    }

    private static void upper(
            PieceBuilder piece, RaglanSeam seam, String centre, Notch.Kind notch, Allowances allowances) {
        Path neck = seam.neckRest();
        piece.edge("raglan", EdgeRole.RAGLAN, seam.ofPiece(), allowances.seamMm())
                .edge("neck", EdgeRole.NECK, neck, allowances.seamMm())
                .edge(centre, EdgeRole.CENTRE, Path.through(neck.end(), Point.ORIGIN), 0)
                .onFold(centre)
                .notch("raglan", seam.notchMm(), notch);
    }

    Piece sleeve(Allowances allowances) {
        // The front is laid on turned over: mirrored, the cap lies as the piece does.
        Path frontCap = Mirror.of(sleeve.cap().front());
        Path backCap = sleeve.cap().back().reversed();
        Path frontSeam = Mirror.of(front.ofSleeve(frontCap));
        Path backSeam = back.ofSleeve(backCap).reversed();
        Path frontNeck = Mirror.of(front.neckPart().moved(front.laid(frontCap))).reversed();
        Path backNeck = back.neckPart().moved(back.laid(backCap));
        Point crown = sleeve.cap().crown();
        Point frontLeg = frontNeck.end();
        Point backLeg = backNeck.start();
        Vec away = frontNeck.endTangent().reversed();
        double turn = frontLeg.minus(crown).angleTo(backLeg.minus(crown));
        Point cap = DartCap.point(crown, frontLeg, away, turn / 2);
        Path neck = frontNeck.then(Path.through(frontLeg, cap, backLeg)).then(backNeck);
        double from = frontNeck.length();
        double to = from + frontLeg.distanceTo(cap) + cap.distanceTo(backLeg);
        double seam = allowances.seamMm();
        PieceBuilder piece = sleeve.below(new PieceBuilder("raglan sleeve", PieceKind.RAGLAN_SLEEVE), allowances)
                .edge("raglan front", EdgeRole.RAGLAN, frontSeam, seam)
                .edge("neck", EdgeRole.NECK, neck, seam)
                .edge("raglan back", EdgeRole.RAGLAN, backSeam, seam)
                .dart(new Dart.EdgeDart(DART, "neck", from, to, crown))
                .landmark(Landmark.SHOULDER_POINT, crown)
                .notch("raglan front", front.notchMm(), Notch.Kind.SINGLE)
                .notch("raglan back", backSeam.length() - back.notchMm(), Notch.Kind.DOUBLE);
        return sleeve.closed(piece, allowances);
    }

    static List<Seam> seams() {
        return List.of(
                Seam.of("side", new EdgeRef("raglan front", "side"), new EdgeRef("raglan back", "side"), 0),
                Seam.of(
                        "underarm",
                        new EdgeRef("raglan sleeve", "underarm front"),
                        new EdgeRef("raglan sleeve", "underarm back"),
                        0),
                Seam.of(
                        "raglan front",
                        new EdgeRef("raglan front", "raglan"),
                        new EdgeRef("raglan sleeve", "raglan front"),
                        0),
                Seam.of(
                        "raglan back",
                        new EdgeRef("raglan back", "raglan"),
                        new EdgeRef("raglan sleeve", "raglan back"),
                        0));
    }
}
