package trueseam.drafting;

import java.util.List;
import trueseam.garment.ease.GarmentKind;
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
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A princess bodice from a solved bodice: seams from the shoulder over the bust point, and over the shoulder blade, to the waist.
 *
 * <pre>{@code
 *    N---A---S      Above the bust point B both panels have one line. Below it their edges are
 *    |   |   |      mirror images, so they walk; between them lie the waist dart and the bust
 *    |   |  (_U     dart, which is closed: the side W' lies as sewn. How far C and C' are apart
 *    |   B    |     is solved so that the waist measures right. The grain of the side panel is
 *    |  / \   |     square to the bust line (common practice).
 *    |_C   C'_W'
 * }</pre>
 *
 * A working object of one draft, on one thread.
 */
final class PrincessDraft {

    private static final Vec UP = new Vec(0, 1);
    private static final double CURVE_SHARE = 0.3;
    private static final String SHELL = "princess bodice";

    /** Far below the 0.1 mm that is promised. */
    private static final double WIDTH_MM = 1e-6;

    private final Upper upper;
    private final UpperDraft draft;
    private final UpperPlan plan;
    private final double slantRad; // how much more upright the front side lies before it is turned

    private double apartMm = 25; // half of what lies between the edges at the front waist
    private Path frontCentreEdge; // from waist to shoulder
    private Path frontSideEdge; // the same, of the side panel
    private Path frontCentreWaist;
    private Path frontSideWaist;

    private PrincessDraft(Upper upper) {
        this.upper = upper;
        this.draft = upper.draft();
        this.plan = upper.plan();
        this.slantRad =
                draft.backSide().tangent(0).angleTo(draft.frontClosedSide().tangent(0));
    }

    /**
     * Drafts a princess bodice. Turning the side panel changes what the ruler reads across it, so the widths that the bodice is
     * solved for are corrected until the panels measure right.
     *
     * @param figure whom for
     * @param ease how much larger
     */
    static PrincessDraft of(DraftFigure figure, DraftEase ease) {
        UpperPlan wanted = UpperPlan.of(SHELL, GarmentKind.BODICE, figure, ease);
        double[] widths = {wanted.frontBust(), wanted.frontAcross()};
        PrincessDraft[] drawn = new PrincessDraft[1];
        Settling.within(
                WIDTH_MM,
                share -> {
                    UpperPlan plan = wanted.withFront(widths[0], widths[1]);
                    PrincessDraft princess = new PrincessDraft(Upper.of(plan, GarmentKind.BODICE, figure, ease));
                    Settling.of(princess::round, SHELL, Measure.WAIST_GIRTH);
                    drawn[0] = princess;
                    double bustMiss = wanted.frontBust() - princess.width(princess.draft.frontBustLevel());
                    double acrossMiss = wanted.frontAcross() - princess.width(princess.acrossLevel());
                    widths[0] += share * bustMiss;
                    widths[1] += share * acrossMiss;
                    return Math.max(Math.abs(bustMiss), Math.abs(acrossMiss));
                },
                SHELL,
                figure.trunkGirth());
        return drawn[0];
    }

    Upper upper() {
        return upper;
    }

    private double acrossLevel() {
        return Armhole.acrossLevel(draft.frontUnderarm(), draft.frontArmhole().end());
    }

    /** From the centre over both panels, at a level of the centre panel. */
    private double width(double y) {
        Point seam = frontCentreEdge.atLevel(y).orElseThrow().point();
        Point lies = turn().apply(seam);
        double right = lies.x();
        for (Path path : List.of(frontSide(), frontArmhole())) {
            for (PathPlace place : path.crossings(lies, new Vec(1, 0))) {
                right = Math.max(right, place.point().x());
            }
        }
        return seam.x() + right - lies.x();
    }

    /** Where a level of the centre panel meets the seam of the side panel. */
    private double sideLevel(double y) {
        return turn().apply(frontCentreEdge.atLevel(y).orElseThrow().point()).y();
    }

    /** Lays the side panel so that its side seam slants as that of the back does. */
    private Motion turn() {
        return Motion.pivot(bust(), -slantRad);
    }

    private Path frontSide() {
        return Path.of(draft.frontClosedSide()).moved(turn());
    }

    private Path frontArmhole() {
        return draft.frontArmhole().moved(turn());
    }

    private Point bust() {
        return new Point(draft.bustPoint.x(), Math.min(draft.bustPoint.y(), draft.frontBustLevel()));
    }

    private double round(double share) {
        Point bust = bust();
        Point centre = new Point(bust.x() - apartMm, 0);
        Segment lower = lower(centre, bust);
        for (int i = 0; i < 3; i++) { // where the waist comes to lie depends a little on how the seam leans
            double angle = lower.tangent(0).right().angle();
            centre = new Point(centre.x(), centre.x() * Math.tan(angle / 2));
            lower = lower(centre, bust);
        }
        Path below = Path.of(lower);
        Path mirrored = GoredDraft.mirrored(below, bust.x()).moved(Motion.pivot(bust, slantRad));
        Vec arriving = lower.tangent(0).right();
        Segment side = draft.frontClosedSide();
        frontCentreWaist = Path.of(Joining.smooth(Point.ORIGIN, new Vec(1, 0), centre, arriving));
        frontSideWaist = Path.of(Joining.smooth(
                mirrored.start(),
                new Vec(arriving.x(), -arriving.y()).turned(slantRad),
                side.start(),
                side.tangent(0).right()));
        Path above = Path.of(Joining.smooth(bust, atBust(), frontShoulderPoint(), arrivingAtShoulder()));
        frontCentreEdge = below.then(above);
        frontSideEdge = mirrored.then(above);
        double miss = plan.frontWaist() - frontCentreWaist.length() - frontSideWaist.length();
        apartMm -= share * miss / 2;
        return Math.abs(miss);
    }

    /** Half way, so that the seam is smooth on the turned side panel as well. */
    private Vec atBust() {
        return UP.turned(slantRad / 2);
    }

    private Segment lower(Point waist, Point bust) {
        Vec chord = bust.minus(waist);
        return Joining.smooth(waist, chord.turned(CURVE_SHARE * atBust().angleTo(chord)), bust, atBust());
    }

    private Point frontShoulderPoint() {
        return draft.frontShoulder.neckPoint().towards(draft.frontShoulder.shoulderPoint(), ShoulderLine.DART_SHARE);
    }

    /** So that the seams of front and back run on into each other over the shoulder. */
    private Vec arrivingAtShoulder() {
        Path back = backEdge(true);
        double atBack = back.endTangent().angleTo(draft.backShoulder.path().endTangent());
        return draft.frontShoulder.inwards().turned(atBack - Math.PI);
    }

    /** From waist to shoulder: of the centre panel or of the side panel. */
    private Path backEdge(boolean centre) {
        Path waist = draft.backWaistLine().path();
        List<Dart> waistDarts = draft.backWaistLine().darts();
        double from = waist.length() / 2;
        double to = from;
        Point apex = draft.backDartApex();
        if (!waistDarts.isEmpty() && waistDarts.get(0) instanceof Dart.EdgeDart d) {
            from = d.fromMm();
            to = d.toMm();
            apex = d.apex();
        }
        Point foot = waist.pointAt(centre ? from : to);
        Dart.EdgeDart shoulder = (Dart.EdgeDart) draft.backShoulder.darts().get(0);
        Path line = draft.backShoulder.path();
        Point outer = line.pointAt(shoulder.fromMm());
        Point inner = line.pointAt(shoulder.toMm());
        Point top = shoulder.apex();
        Vec axis = inner.towards(outer, 0.5).minus(top);
        Point leg = centre ? inner : outer;
        return Path.of(
                Joining.smooth(foot, apex.minus(foot), apex, UP),
                Joining.smooth(apex, UP, top, axis),
                Joining.smooth(top, axis, leg, leg.minus(top)));
    }

    private Path backWaist(boolean centre) {
        Path waist = draft.backWaistLine().path();
        List<Dart> darts = draft.backWaistLine().darts();
        double from = waist.length() / 2;
        double to = from;
        if (!darts.isEmpty() && darts.get(0) instanceof Dart.EdgeDart d) {
            from = d.fromMm();
            to = d.toMm();
        }
        return centre ? waist.part(0, from) : waist.part(to, waist.length());
    }

    List<Piece> pieces(Allowances allowances) {
        return List.of(centreFront(allowances), sideFront(allowances), sideBack(allowances), centreBack(allowances));
    }

    private Piece centreFront(Allowances allowances) {
        Path shoulder = Path.through(frontShoulderPoint(), draft.frontShoulder.neckPoint());
        PieceBuilder piece = centre(
                        "front",
                        PieceKind.BODICE_CENTRE_FRONT,
                        frontCentreWaist,
                        frontCentreEdge,
                        shoulder,
                        draft.frontNeck,
                        allowances)
                .notch("panel", frontCentreEdge.startOf(1), Notch.Kind.SINGLE)
                .level(
                        LevelName.ACROSS,
                        Armhole.acrossLevel(
                                draft.frontUnderarm(), draft.frontArmhole().end()))
                .level(LevelName.BUST, draft.frontBustLevel())
                .level(LevelName.BODICE_LENGTH, frontLength());
        if (plan.bustDart()) {
            piece.landmark(Landmark.BUST_POINT, draft.bustPoint);
        }
        return piece.build();
    }

    private double frontLength() {
        return UpperPieces.lengthLine(bust().y());
    }

    private Piece sideFront(Allowances allowances) {
        Path shoulder = Path.through(draft.frontShoulder.shoulderPoint(), frontShoulderPoint());
        Path edge = frontSideEdge.moved(turn());
        Path waist = frontSideWaist.moved(turn());
        Path armhole = frontArmhole();
        double bustY = sideLevel(draft.frontBustLevel());
        double low = (waist.start().y() + waist.end().y()) / 2;
        return side(
                        "front",
                        PieceKind.BODICE_SIDE_FRONT,
                        waist,
                        frontSide(),
                        armhole,
                        shoulder.moved(turn()),
                        edge,
                        allowances)
                .notch("panel", edge.length() - edge.startOf(1), Notch.Kind.SINGLE)
                .notch("armhole", UpperPieces.notchMm(armhole), Notch.Kind.SINGLE)
                .level(LevelName.ACROSS, sideLevel(acrossLevel()))
                .level(LevelName.BUST, bustY)
                .level(LevelName.BODICE_LENGTH, low + UpperPieces.lengthLine(bustY - low))
                .build();
    }

    private Piece centreBack(Allowances allowances) {
        Path line = draft.backShoulder.path();
        Dart.EdgeDart dart = (Dart.EdgeDart) draft.backShoulder.darts().get(0);
        Path edge = backEdge(true);
        return centre(
                        "back",
                        PieceKind.BODICE_CENTRE_BACK,
                        backWaist(true),
                        edge,
                        line.part(dart.toMm(), line.length()),
                        draft.backNeck,
                        allowances)
                .notch("panel", edge.startOf(1), Notch.Kind.DOUBLE)
                .level(
                        LevelName.ACROSS,
                        Armhole.acrossLevel(
                                draft.backUnderarm(), draft.backArmhole().end()))
                .level(LevelName.BUST, draft.backBustLevel())
                .level(LevelName.BODICE_LENGTH, UpperPieces.lengthLine(draft.backBustLevel()))
                .build();
    }

    private Piece sideBack(Allowances allowances) {
        Path line = draft.backShoulder.path();
        Dart.EdgeDart dart = (Dart.EdgeDart) draft.backShoulder.darts().get(0);
        Path edge = backEdge(false);
        Path armhole = draft.backArmhole();
        return side(
                        "back",
                        PieceKind.BODICE_SIDE_BACK,
                        backWaist(false),
                        Path.of(draft.backSide()),
                        armhole,
                        line.part(0, dart.fromMm()),
                        edge,
                        allowances)
                .notch("panel", edge.length() - edge.startOf(1), Notch.Kind.DOUBLE)
                .notch("armhole", UpperPieces.notchMm(armhole), Notch.Kind.DOUBLE)
                .level(LevelName.ACROSS, Armhole.acrossLevel(draft.backUnderarm(), armhole.end()))
                .level(LevelName.BUST, draft.backBustLevel())
                .level(LevelName.BODICE_LENGTH, UpperPieces.lengthLine(draft.backBustLevel()))
                .build();
    }

    private PieceBuilder centre(
            String which, PieceKind kind, Path waist, Path edge, Path shoulder, Path neck, Allowances allowances) {
        double seam = allowances.seamMm();
        String centre = "centre " + which;
        return new PieceBuilder("bodice centre " + which, kind)
                .edge("waist", EdgeRole.WAIST, waist, seam)
                .edge("panel", EdgeRole.PANEL, edge, seam)
                .edge("shoulder", EdgeRole.SHOULDER, shoulder, seam)
                .edge("neck", EdgeRole.NECK, neck, seam)
                .edge(centre, EdgeRole.CENTRE, Path.through(neck.end(), waist.start()), 0)
                .onFold(centre)
                .level(LevelName.WAIST, 0)
                .grain(UpperPieces.grain(0.5 * waist.end().x(), 0, neck.end().y()));
    }

    private PieceBuilder side(
            String which,
            PieceKind kind,
            Path waist,
            Path side,
            Path armhole,
            Path shoulder,
            Path edge,
            Allowances allowances) {
        double seam = allowances.seamMm();
        double x = (edge.pointAt(edge.startOf(1)).x() + side.end().x()) / 2;
        return new PieceBuilder("bodice side " + which, kind)
                .cut(2)
                .edge("waist", EdgeRole.WAIST, waist, seam)
                .edge("side", EdgeRole.SIDE, side, seam)
                .edge("armhole", EdgeRole.ARMHOLE, armhole, seam)
                .edge("shoulder", EdgeRole.SHOULDER, shoulder, seam)
                .edge("panel", EdgeRole.PANEL, edge.reversed(), seam)
                .grain(UpperPieces.grain(x, waist.end().y(), side.end().y()));
    }

    static List<Seam> seams(DraftEase ease) {
        double inner = ShoulderLine.DART_SHARE * ease.backShoulderMm();
        return List.of(
                Seam.of(
                        "centre shoulder",
                        new EdgeRef("bodice centre front", "shoulder"),
                        new EdgeRef("bodice centre back", "shoulder"),
                        inner),
                Seam.of(
                        "side shoulder",
                        new EdgeRef("bodice side front", "shoulder"),
                        new EdgeRef("bodice side back", "shoulder"),
                        ease.backShoulderMm() - inner),
                Seam.of(
                        "front panel",
                        new EdgeRef("bodice centre front", "panel"),
                        new EdgeRef("bodice side front", "panel"),
                        0),
                Seam.of(
                        "back panel",
                        new EdgeRef("bodice centre back", "panel"),
                        new EdgeRef("bodice side back", "panel"),
                        0),
                Seam.of("side", new EdgeRef("bodice side front", "side"), new EdgeRef("bodice side back", "side"), 0),
                Seam.of("underarm", new EdgeRef("sleeve", "underarm front"), new EdgeRef("sleeve", "underarm back"), 0),
                new Seam(
                        "armhole",
                        List.of(
                                new EdgeRef("bodice side back", "armhole"),
                                new EdgeRef("bodice side front", "armhole")),
                        List.of(new EdgeRef("sleeve", "cap back"), new EdgeRef("sleeve", "cap front")),
                        ease.capMm()));
    }
}
