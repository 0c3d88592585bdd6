package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PanelChoice;
import trueseam.fitting.alteration.PanelGirth;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Hem sweep of a skirt that is too narrow or too wide at the bottom: at the side seams, or by a cut from the hem to the dart. */
final class SkirtFlare {

    /** How far to either side of the cut the hem is drawn new. */
    private static final double CUT_MM = 20;

    static final Entry ENTRY = Entry.named("hem sweep", Family.SKIRT, Stage.WIDTH, Gore.SKIRTS)
            .folds("the hem binds in walking", "the skirt cups in below the seat although the hip fits")
            .amount("flares the skirt towards the hem", "narrows the skirt towards the hem")
            .moves(
                    "the side seams below the hip, or the skirt from the hem to the waist dart; in gores the seams between them")
            .sharing(
                    "N/4 on each of four side edges, or N/4 in each of the four cuts; in gores N/2k over k seams between them")
            .pin("hip point; for the cut: point of the waist dart; in gores the hip at each seam")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.CENTRE))
            .alsoStays("waist and hip; with the cut the hip grows a little, by what the dart gives up above it")
            .trued("the hem at the side; the side is blended at the hip")
            .source("common practice")
            .amounts(101.6, 203.2)
            .variant(
                    "side seams",
                    "the usual way, up to about an inch on each edge",
                    Maker.each(
                            EnumSet.of(
                                    PieceKind.SKIRT_FRONT,
                                    PieceKind.SKIRT_BACK,
                                    PieceKind.SKIRT_SIDE_FRONT,
                                    PieceKind.SKIRT_SIDE_BACK),
                            SkirtFlare::atSide))
            .variant(
                    "from the dart",
                    "for more, so that the flare does not stand at the sides alone; the waist dart gives what opens; in gores the"
                            + " seams between them are flared",
                    SkirtFlare::inside)
            .written();

    static final Entry DRESS = Entry.named(
                    "dress hem sweep", Family.SKIRT, Stage.WIDTH, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK)
            .folds("the hem of the dress binds in walking", "the dress cups in below the seat although the hip fits")
            .amount("flares the dress towards the hem", "narrows the dress towards the hem")
            .moves("the side seams below the hip")
            .sharing("N/4 on each of four side edges")
            .pin("hip point")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.NECK),
                    Stay.all(EdgeRole.CENTRE))
            .alsoStays("bust, waist and hip; of the side blending takes a hair, front and back alike")
            .trued("the hem at the side; the side is blended at the hip")
            .source("common practice")
            .amounts(25.4, 50.8)
            .doneBy(Maker.each(EnumSet.of(PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK), SkirtFlare::atSide));

    private SkirtFlare() {}

    private static void atSide(StepList list, Piece piece, double mm) {
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        side.swing(list, side.at(LevelName.HIP, "hip point"), side.bottom("side hem"), mm / 4);
        side.joinBeside(list, EdgeRole.HEM, false);
    }

    private static List<PieceWork> inside(Pattern pattern, double mm) {
        if (!PanelGirth.isPanelled(pattern)) {
            return Maker.each(SkirtGirth.SKIRTS, SkirtFlare::fromDart).work(pattern, mm);
        }
        int edges = PanelGirth.cutEdges(pattern, PanelChoice.PANEL_SEAMS);
        return Maker.each(Gore.SKIRTS, (list, piece, all) -> atPanels(list, piece, all / edges))
                .work(pattern, mm);
    }

    private static void atPanels(StepList list, Piece piece, double outMm) {
        for (Edge edge : piece.edgesOf(EdgeRole.PANEL)) {
            SeamLine seam = new SeamLine(piece, edge);
            if (!list.isEmpty()) {
                list.add(new Step.LayBack());
            }
            seam.swing(list, seam.at(LevelName.HIP, "hip, " + edge.name()), seam.bottom("hem, " + edge.name()), outMm);
            seam.joinBeside(list, EdgeRole.HEM, false);
        }
    }

    private static void fromDart(StepList list, Piece piece, double mm) {
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        Place sideWaist = new Corners(piece).at(EdgeRole.WAIST, EdgeRole.SIDE, "side waist");
        List<Dart.EdgeDart> darts = WaistDarts.of(piece);
        if (darts.isEmpty()) {
            throw new AlterationException(
                    piece.name(), "waist", mm, "there is no waist dart to open from; flare the side seams.");
        }
        boolean sideFirst = sideWaist.alongMm() < piece.edge(sideWaist.edge()).length() / 2;
        Dart.EdgeDart dart = darts.get(sideFirst ? 0 : darts.size() - 1);
        Spot point = new Spot(dart.apex(), "point of the " + dart.name());
        Edge hem = piece.only(EdgeRole.HEM);
        Place below = new Place(hem.name(), below(piece, hem, dart.apex()), "hem below the dart");
        double opens = mm
                / 4
                * (sideWaist.on(piece).y() - dart.apex().y())
                / (dart.apex().y() - below.on(piece).y());
        WaistDarts.requireHolds(piece, dart, -opens, mm);
        Place leg = new Place(dart.edge(), sideFirst ? dart.fromMm() : dart.toMm(), "leg nearer the side");
        list.cut("side part", below, List.of(point), leg, sideWaist);
        list.add(new Step.Spread(point, new Until.MovesAcross(Spot.of(piece, below), side.outward() * mm / 4)));
        boolean cornerFirst = side.bottom("").on(piece).isNear(hem.path().start(), 1e-6);
        // What laps is cut away: the hem is drawn anew from beside the cut to beyond the lap.
        double beyond = CUT_MM + Math.max(0, -mm / 4);
        double onPart = below.alongMm() + (cornerFirst ? -beyond : beyond);
        double onRest = below.alongMm() + (cornerFirst ? CUT_MM : -CUT_MM);
        if (Math.min(onPart, onRest) < 0 || Math.max(onPart, onRest) > hem.length()) {
            throw new AlterationException(
                    piece.name(),
                    hem.name(),
                    mm,
                    "the hem is too short to be lapped so far below the dart; narrow the side seams.");
        }
        double hemCorner = cornerFirst ? 0 : hem.length();
        list.trace(hem.name(), Math.min(onPart, hemCorner), Math.max(onPart, hemCorner));
        list.trace(side.bottom(""), side.top(""));
        list.trace(
                dart.edge(),
                Math.min(leg.alongMm(), sideWaist.alongMm()),
                Math.max(leg.alongMm(), sideWaist.alongMm()));
        list.join(
                hem.name(),
                Math.min(onPart, onRest),
                Math.max(onPart, onRest),
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        list.join(dart.edge(), dart.fromMm(), dart.toMm(), JoinForm.REFIT);
    }

    private static double below(Piece piece, Edge hem, Point apex) {
        return hem.path().crossings(apex, new Vec(0, 1)).stream()
                .findFirst()
                .map(PathPlace::alongMm)
                .orElseThrow(() -> new AlterationException(
                        piece.name(), hem.name(), 0, "the hem does not lie below the dart; flare the side seams."));
    }
}
