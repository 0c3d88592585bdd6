package trueseam.drafting;

import java.util.List;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A back with a yoke, from a solved bodice: divided across at the height of the shoulder dart's point.
 *
 * <pre>{@code
 *    |---N__S'     The dart is closed, so the outer part of the yoke turns up about its point and the
 *    |      |      yoke's lower edge rises towards the armhole. The lower back keeps its straight
 *    |______G'     upper edge: both are of one length, and between them lies what the dart took.
 *
 *    |______G
 *    |      |
 * }</pre>
 */
final class YokeDraft {

    private final UpperDraft draft;
    private final UpperPlan plan;
    private final Allowances allowances;
    private final double seamY;
    private final double cutMm; // along the armhole, from the underarm
    private final Motion close;
    private final Dart.EdgeDart dart;

    YokeDraft(Upper upper, Allowances allowances) {
        this.draft = upper.draft();
        this.plan = upper.plan();
        this.allowances = allowances;
        this.dart = (Dart.EdgeDart) draft.backShoulder.darts().get(0);
        Path shoulder = draft.backShoulder.path();
        Vec outer = shoulder.pointAt(dart.fromMm()).minus(dart.apex());
        Vec inner = shoulder.pointAt(dart.toMm()).minus(dart.apex());
        close = Motion.pivot(dart.apex(), outer.angleTo(inner));
        seamY = dart.apex().y();
        PathPlace place = draft.backArmhole()
                .atLevel(seamY)
                .orElseThrow(
                        () -> new DraftException(
                                plan.shell(),
                                Measure.BACK_WAIST_LENGTH,
                                seamY,
                                draft.backUnderarm().y(),
                                "the shoulder dart ends below the armhole, so that no yoke can be cut there; measure the back again"));
        cutMm = place.alongMm();
    }

    private Path lowerArmhole() {
        return draft.backArmhole().part(0, cutMm);
    }

    Piece yoke() {
        double seam = allowances.seamMm();
        Path upper =
                draft.backArmhole().part(cutMm, draft.backArmhole().length()).moved(close);
        Point centre = new Point(0, seamY);
        double lengthMm = lowerArmhole().end().x();
        Path edge = Path.of(
                Joining.smoothOfLength(centre, new Vec(1, 0), upper.start(), close.apply(new Vec(1, 0)), lengthMm));
        Path shoulder = Path.through(upper.end(), draft.backShoulder.neckPoint());
        return new PieceBuilder("back yoke", PieceKind.BACK_YOKE)
                .edge("yoke", EdgeRole.YOKE, edge, seam)
                .edge("armhole", EdgeRole.ARMHOLE, upper, seam)
                .edge("shoulder", EdgeRole.SHOULDER, shoulder, seam)
                .edge("neck", EdgeRole.NECK, draft.backNeck, seam)
                .edge("centre back", EdgeRole.CENTRE, Path.through(draft.backNeck.end(), centre), 0)
                .onFold("centre back")
                .notch("yoke", edge.length() / 2, Notch.Kind.DOUBLE)
                .grain(UpperPieces.grain(0.5 * draft.backShoulder.neckPoint().x(), seamY, plan.backLength()))
                .build();
    }

    Piece lowerBack() {
        double seam = allowances.seamMm();
        Path armhole = lowerArmhole();
        Point centre = new Point(0, seamY);
        Path edge = Path.through(armhole.end(), centre);
        PieceBuilder piece = new PieceBuilder("bodice lower back", PieceKind.BODICE_LOWER_BACK)
                .edge("waist", EdgeRole.WAIST, draft.backWaistLine().path(), seam)
                .edge("side", EdgeRole.SIDE, Path.of(draft.backSide()), seam)
                .edge("armhole", EdgeRole.ARMHOLE, armhole, seam)
                .edge("yoke", EdgeRole.YOKE, edge, seam)
                .edge("centre back", EdgeRole.CENTRE, Path.through(centre, Point.ORIGIN), 0)
                .onFold("centre back")
                .notch("armhole", UpperPieces.notchMm(draft.backArmhole()), Notch.Kind.DOUBLE)
                .notch("yoke", edge.length() / 2, Notch.Kind.DOUBLE)
                .level(
                        LevelName.ACROSS,
                        Armhole.acrossLevel(
                                draft.backUnderarm(), draft.backArmhole().end()))
                .level(LevelName.BUST, draft.backBustLevel())
                .level(LevelName.BODICE_LENGTH, UpperPieces.lengthLine(draft.backBustLevel()))
                .level(LevelName.WAIST, 0)
                .grain(UpperPieces.grain(0.25 * draft.backWaist().x(), 0, seamY));
        if (draft.bladePoint.y() < seamY) {
            piece.landmark(Landmark.BLADE_POINT, draft.bladePoint);
        }
        draft.backWaistLine().darts().forEach(piece::dart);
        return piece.build();
    }

    static List<Seam> seams(DraftEase ease) {
        return List.of(
                Seam.of(
                        "shoulder",
                        new EdgeRef("bodice front", "shoulder"),
                        new EdgeRef("back yoke", "shoulder"),
                        ease.backShoulderMm()),
                Seam.of("yoke", new EdgeRef("bodice lower back", "yoke"), new EdgeRef("back yoke", "yoke"), 0),
                Seam.of("side", new EdgeRef("bodice front", "side"), new EdgeRef("bodice lower back", "side"), 0),
                Seam.of("underarm", new EdgeRef("sleeve", "underarm front"), new EdgeRef("sleeve", "underarm back"), 0),
                new Seam(
                        "armhole",
                        List.of(
                                new EdgeRef("bodice lower back", "armhole"),
                                new EdgeRef("back yoke", "armhole"),
                                new EdgeRef("bodice front", "armhole")),
                        List.of(new EdgeRef("sleeve", "cap back"), new EdgeRef("sleeve", "cap front")),
                        ease.capMm()));
    }
}
