package trueseam.fitting.repertoire;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Point;

/**
 * Full and small bust of a front with a waist dart: the side is cut loose from the waist dart over the bust point to a hinge on the
 * armhole, and swung; the part below the side dart is let hang straight again, so that the side dart takes what opens; the centre is cut
 * across and let down by as much as the side came down (common practice; [DM1911] gives the older form).
 */
final class FullBust {

    private static final Set<PieceKind> FRONTS = EnumSet.of(PieceKind.BODICE_FRONT);

    /** Where the hinge lies on the armhole, from the underarm: about the lower third, where the notch is (common practice). */
    private static final double HINGE_SHARE = 0.4;

    /** A dart that holds less than this is none, mm. */
    private static final double LEAST_DART_MM = 2;

    static final Entry ENTRY = Entry.named("full bust", Family.BODICE, Stage.BUST, PieceKind.BODICE_FRONT)
            .calledForBy(Measure.BUST_GIRTH, Measure.UPPER_CHEST_GIRTH)
            .folds("pull lines from the bust to side and waist", "the front waist rises")
            .amount(
                    "spreads the front at the bust point; the darts and the centre front grow",
                    "laps the front at the bust point; the darts and the centre front shrink")
            .moves("the front at the bust point, the side dart, the waist dart, the front below the bust")
            .sharing("N/2 on each half front; the back takes nothing")
            .pin("hinge on the armhole stitching line")
            .stays(
                    Stay.front(EdgeRole.ARMHOLE),
                    Stay.front(EdgeRole.SHOULDER),
                    Stay.front(EdgeRole.NECK),
                    Stay.front(EdgeRole.SIDE),
                    Stay.back(EdgeRole.WAIST))
            .alsoStays("the upper chest; the sewn length of the side seam")
            .trued(
                    "dart legs are drawn of one length; the centre front is let down to match; the bust point is marked anew")
            .source("common practice; older form [DM1911]; shares [TX372]")
            .amounts(25.4, 76.2)
            .doneBy(Maker.each(FRONTS, FullBust::steps));

    private FullBust() {}

    private static void steps(StepList list, Piece piece, double mm) {
        Corners corners = new Corners(piece);
        Spot bust = new Spot(corners.landmark(Landmark.BUST_POINT), "bust point");
        Dart.EdgeDart waistDart = dart(corners.dartOn(EdgeRole.WAIST), piece, "waist", mm);
        Dart.EdgeDart sideDart = dart(corners.dartOn(EdgeRole.SIDE), piece, "side", mm);
        requireDarts(piece, corners, bust, waistDart, sideDart, mm);
        double out = corners.outward();
        String side = corners.edge(EdgeRole.SIDE).name();
        String waist = corners.edge(EdgeRole.WAIST).name();
        String armhole = corners.edge(EdgeRole.ARMHOLE).name();
        double sideMm = piece.edge(side).length();
        double waistMm = piece.edge(waist).length();
        boolean up = out > 0;
        Place sideLeg =
                new Place(waist, up ? waistDart.toMm() : waistDart.fromMm(), "leg of the waist dart nearer the side");
        Place centreLeg =
                new Place(waist, up ? waistDart.fromMm() : waistDart.toMm(), "leg of the waist dart nearer the centre");
        Place lowerLeg = new Place(side, up ? sideDart.fromMm() : sideDart.toMm(), "lower leg of the side dart");
        Place upperLeg = new Place(side, up ? sideDart.toMm() : sideDart.fromMm(), "upper leg of the side dart");
        Place underarm = corners.underarm();
        Place hinge = corners.from(
                corners.at(EdgeRole.ARMHOLE, EdgeRole.SIDE, "underarm point"),
                piece.edge(armhole).length() * HINGE_SHARE,
                "hinge on the armhole");

        list.cut("side of the front", sideLeg, List.of(bust), hinge, underarm);
        list.add(new Step.Spread(Spot.of(piece, hinge), new Until.MovesAcross(bust, out * mm / 2)));
        trace(
                list,
                armhole,
                hinge.alongMm(),
                corners.isStart(corners.at(EdgeRole.ARMHOLE, EdgeRole.SIDE, ""))
                        ? 0
                        : piece.edge(armhole).length());
        trace(list, side, upperLeg.alongMm(), up ? sideMm : 0);

        list.cut("lower side", sideLeg, List.of(bust), lowerLeg, corners.sideWaist());
        list.add(new Step.Spread(bust, new Until.GrainUpright()));
        trace(list, side, lowerLeg.alongMm(), up ? 0 : sideMm);
        trace(list, waist, sideLeg.alongMm(), up ? waistMm : 0);
        list.join(side, sideDart.fromMm(), sideDart.toMm(), JoinForm.STRAIGHT);
        list.join(waist, waistDart.fromMm(), waistDart.toMm(), JoinForm.REFIT);
        lowerCentre(list, piece, corners, bust, centreLeg, mm);
    }

    /** The centre comes down by as much as the side part did. */
    private static void lowerCentre(
            StepList list, Piece piece, Corners corners, Spot bust, Place centreLeg, double mm) {
        double drop = drop(piece, corners, bust, mm);
        Point leg = centreLeg.on(piece);
        double y = leg.y() + (bust.at().y() - leg.y()) / 2;
        double share = (y - leg.y()) / (bust.at().y() - leg.y());
        Spot onCut = new Spot(leg.towards(bust.at(), share), "slash");
        String centre = corners.edge(EdgeRole.CENTRE).name();
        double at = piece.edge(centre)
                .path()
                .atLevel(y)
                .orElseThrow(() -> new AlterationException(
                        piece.name(), centre, mm, "the centre front does not cross the line below the bust."))
                .alongMm();
        Place onCentre = new Place(centre, at, "centre front below the bust");
        String waist = centreLeg.edge();
        boolean up = corners.outward() > 0;
        list.cut("lower centre", centreLeg, List.of(onCut), onCentre, corners.centreWaist());
        list.add(new Step.Slide(0, -drop));
        trace(list, centre, at, up ? piece.edge(centre).length() : 0);
        trace(list, waist, centreLeg.alongMm(), up ? 0 : piece.edge(waist).length());
        list.join(centre, at, at, JoinForm.STRAIGHT);
    }

    /** A lapped front takes from its darts: what they do not hold cannot be taken. */
    private static void requireDarts(
            Piece piece, Corners corners, Spot bust, Dart.EdgeDart waist, Dart.EdgeDart side, double mm) {
        double arm = bust.at().distanceTo(corners.edge(EdgeRole.SIDE).path().pointAt(side.fromMm()));
        double sideTakes = Math.abs(swing(piece, corners, bust, mm).turnRad()) * arm;
        if (mm < 0 && (waist.mouthMm() + mm / 2 < LEAST_DART_MM || side.mouthMm() - sideTakes < LEAST_DART_MM)) {
            throw new AlterationException(
                    piece.name(),
                    "bust point",
                    mm,
                    "the darts do not hold so much; lap less, or take the next smaller size for the bust.");
        }
    }

    private static double drop(Piece piece, Corners corners, Spot bust, double mm) {
        return bust.at().y() - swing(piece, corners, bust, mm).apply(bust.at()).y();
    }

    /** How the side part swings: found by doing the same with geometry. */
    private static Motion swing(Piece piece, Corners corners, Spot bust, double mm) {
        Place underarm = corners.at(EdgeRole.ARMHOLE, EdgeRole.SIDE, "underarm point");
        double armhole = piece.edge(underarm.edge()).length();
        Point hinge = corners.from(underarm, armhole * HINGE_SHARE, "hinge").on(piece);
        try {
            return Motion.pivotAcross(hinge, bust.at(), corners.outward() * mm / 2);
        } catch (OutOfReachException e) {
            throw new AlterationException(
                    piece.name(), "bust point", mm, "the front cannot be spread so far; take the next size.");
        }
    }

    private static Dart.EdgeDart dart(Optional<Dart.EdgeDart> dart, Piece piece, String where, double mm) {
        return dart.orElseThrow(() -> new AlterationException(
                piece.name(),
                where,
                mm,
                "a front with a " + where + " dart is needed for this way; choose another way or mark the dart."));
    }

    private static void trace(StepList list, String edge, double oneMm, double otherMm) {
        list.trace(edge, Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
    }
}
