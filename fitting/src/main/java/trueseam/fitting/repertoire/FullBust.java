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
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.Point;

/**
 * Full and small bust of a front: the side is cut loose from the waist dart (of a dress: from the hem through its waist dart) over the
 * bust point to a hinge on the armhole, and swung; the part below the side dart is let hang straight again, so that the side dart takes
 * what opens, or one is made of it; the centre is cut across and let down by as much as the side came down (common practice; [DM1911]
 * gives the older form).
 */
final class FullBust {

    /** How much of a hem is ruled new on either side of a lap, mm. */
    private static final double HEM_BESIDE_MM = 3;

    private static final Set<PieceKind> FRONTS = EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT);

    /** Where the hinge lies on the armhole, from the underarm: about the lower third, where the notch is (common practice). */
    private static final double HINGE_SHARE = 0.4;

    /** A dart that holds less than this is none, mm. */
    private static final double LEAST_DART_MM = 2;

    static final Entry ENTRY = Entry.named("full bust", Family.BODICE, Stage.BUST, FRONTS.toArray(PieceKind[]::new))
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
            .alsoStays("the upper chest; the sewn length of the side seam; the waist, whose dart takes what opens")
            .trued(
                    "dart legs are drawn of one length; the centre front is let down to match; the bust point is marked anew")
            .source("common practice; older form [DM1911]; shares [TX372]")
            .amounts(25.4, 76.2)
            .variant(
                    "let the hem grow",
                    "a dress keeps its line from the bust down; a bodice has no hem (common practice)",
                    Maker.each(FRONTS, (list, piece, mm) -> new FullBust(piece, mm).steps(list, false)))
            .variant(
                    "keep the hem",
                    "a dress is hinged at its hem too, and is wider at the hip but not at the hem (common practice)",
                    Maker.each(FRONTS, (list, piece, mm) -> new FullBust(piece, mm).steps(list, true)))
            .written();

    private final BustFront front;
    private final Piece piece;
    private final double mm;
    private final double outMm;
    private final Opening side;
    private final Opening below;
    private final Spot middle;
    private final Place hinge;

    /** Where a cut ends at an edge: at the legs of a dart, or at a place where a dart is made or none is needed. */
    private record Opening(Place towardsSide, Place towardsCentre, Optional<Dart.EdgeDart> dart) {
        static Opening at(Place place) {
            return new Opening(place, place, Optional.empty());
        }
    }

    private FullBust(Piece piece, double mm) {
        this.front = new BustFront(piece);
        this.piece = piece;
        this.mm = mm;
        this.outMm = front.corners.outward() * mm / 2;
        this.side = side();
        Optional<Dart.DiamondDart> diamond = front.diamond();
        this.middle = diamond.map(d -> new Spot(d.left().towards(d.right(), 0.5), "middle of the waist dart"))
                .orElse(front.bust);
        this.below = below();
        Place underarm = front.underarmOnArmhole();
        this.hinge = front.corners.from(
                underarm, piece.edge(underarm.edge()).length() * HINGE_SHARE, "hinge on the armhole");
        requireDarts(diamond);
    }

    private Opening side() {
        return front.sideDart()
                .map(dart -> new Opening(front.upperLeg(dart), front.lowerLeg(dart), Optional.of(dart)))
                .orElseGet(() -> Opening.at(front.sideBelowBust(mm)));
    }

    private Opening below() {
        if (piece.kind().isDress()) {
            return Opening.at(front.under(EdgeRole.HEM, middle.at(), mm));
        }
        Optional<Dart.EdgeDart> dart = front.corners.dartOn(EdgeRole.WAIST);
        String waist = front.corners.edge(EdgeRole.WAIST).name();
        return dart.map(d -> new Opening(
                        new Place(waist, front.up ? d.toMm() : d.fromMm(), "leg of the waist dart nearer the side"),
                        new Place(waist, front.up ? d.fromMm() : d.toMm(), "leg of the waist dart nearer the centre"),
                        dart))
                .orElseGet(() -> Opening.at(front.under(EdgeRole.WAIST, front.bust.at(), mm)));
    }

    private List<Spot> upwards() {
        return middle.equals(front.bust) ? List.of(front.bust) : List.of(middle, front.bust);
    }

    private void steps(StepList list, boolean keepHem) {
        Place from = below.towardsSide();
        list.cut("side of the front", from, upwards(), hinge, front.corners.underarm());
        list.add(new Step.Spread(Spot.of(piece, hinge), new Until.MovesAcross(front.bust, outMm)));
        list.trace(hinge, front.underarmOnArmhole());
        list.trace(side.towardsSide(), front.corners.underarm());

        list.cut("lower side", from, upwards(), side.towardsCentre(), front.bottomOfSide());
        list.add(new Step.Spread(front.bust, new Until.GrainUpright()));
        if (keepHem && piece.kind().isDress()) {
            list.add(new Step.Spread(front.bust, new Until.MovesAcross(Spot.of(piece, from), -outMm)));
        }
        list.trace(side.towardsCentre(), front.bottomOfSide());
        double lap = keepHem ? 0 : hemLap();
        list.trace(front.up ? after(from, lap) : before(from, lap), front.bottomCornerAtSide(from.edge()));
        join(
                list,
                side,
                "side dart",
                new Spot(front.dartPointFrom(side.towardsSide()), "place short of the bust point"));
        if (lap > 0) {
            list.join(before(from, lap), after(from, lap), JoinForm.STRAIGHT);
        } else {
            join(list, below, "waist dart", new Spot(front.dartPointFrom(from), "place short of the bust point"));
        }
        lowerCentre(list, lap);
    }

    /** How much of the hem is drawn new on either side of the cut where it laps; none where it opens or there is no hem. */
    private double hemLap() {
        return mm < 0 && piece.kind().isDress() ? -mm / 4 + HEM_BESIDE_MM : 0;
    }

    private static Place before(Place place, double mm) {
        return new Place(place.edge(), place.alongMm() - mm, place.word());
    }

    private static Place after(Place place, double mm) {
        return new Place(place.edge(), place.alongMm() + mm, place.word());
    }

    private void join(StepList list, Opening opening, String name, Spot point) {
        Place at = opening.towardsSide();
        if (opening.dart().isPresent()) {
            Dart.EdgeDart dart = opening.dart().get();
            boolean inSide = at.edge().equals(front.side);
            list.join(at.edge(), dart.fromMm(), dart.toMm(), inSide ? JoinForm.STRAIGHT : JoinForm.REFIT);
            return;
        }
        list.join(at.edge(), at.alongMm(), at.alongMm(), JoinForm.STRAIGHT);
        boolean atHem = piece.edge(at.edge()).role() == EdgeRole.HEM;
        if (!atHem) {
            list.add(new Step.NewDart(name, new Stretch(at.edge(), at.alongMm(), at.alongMm()), point));
        }
    }

    /** The centre comes down by as much as the side part did. */
    private void lowerCentre(StepList list, double hemLap) {
        double drop = front.bust.at().y() - swing().apply(front.bust.at()).y();
        Place leg = below.towardsCentre();
        Point low = middle.equals(front.bust) ? leg.on(piece) : middle.at();
        Spot onCut = new Spot(low.towards(front.bust.at(), 0.5), "slash");
        String centre = front.corners.edge(EdgeRole.CENTRE).name();
        double at = piece.edge(centre)
                .path()
                .atLevel(onCut.at().y())
                .orElseThrow(() -> new AlterationException(
                        piece.name(), centre, mm, "the centre front does not cross the line below the bust."))
                .alongMm();
        Place onCentre = new Place(centre, at, "centre front below the bust");
        List<Spot> through = middle.equals(front.bust) ? List.of(onCut) : List.of(middle, onCut);
        Place corner =
                front.corners.at(piece.edge(leg.edge()).role(), EdgeRole.CENTRE, "lower end of the centre front");
        list.cut("lower centre", leg, through, onCentre, corner);
        list.add(new Step.Slide(0, -drop));
        list.trace(centre, front.up ? at : 0, front.up ? piece.edge(centre).length() : at);
        list.trace(front.up ? before(leg, hemLap) : after(leg, hemLap), corner);
        // Where the centre comes up it laps: as much of what stays is left out.
        double lap = Math.max(0, -drop);
        list.join(centre, front.up ? at - lap : at, front.up ? at : at + lap, JoinForm.STRAIGHT);
    }

    /** A lapped front takes from its darts: what they do not hold cannot be taken. */
    private void requireDarts(Optional<Dart.DiamondDart> diamond) {
        if (mm > 0) {
            return;
        }
        double waist = below.dart()
                .map(Dart.EdgeDart::mouthMm)
                .orElse(diamond.map(Dart.DiamondDart::intakeMm).orElse(0.0));
        double arm = front.bust.at().distanceTo(side.towardsCentre().on(piece));
        double sideTakes = Math.abs(swing().turnRad()) * arm;
        double holds = side.dart().map(Dart.EdgeDart::mouthMm).orElse(0.0);
        if (waist + mm / 2 < LEAST_DART_MM || holds - sideTakes < LEAST_DART_MM) {
            throw new AlterationException(
                    piece.name(),
                    "bust point",
                    mm,
                    "the darts do not hold so much; lap less, or take the next smaller size for the bust.");
        }
    }

    /** How the side part swings: found by doing the same with geometry. */
    private Motion swing() {
        try {
            return Motion.pivotAcross(hinge.on(piece), front.bust.at(), outMm);
        } catch (OutOfReachException e) {
            throw new AlterationException(
                    piece.name(), "bust point", mm, "the front cannot be spread so far; take the next size.");
        }
    }
}
