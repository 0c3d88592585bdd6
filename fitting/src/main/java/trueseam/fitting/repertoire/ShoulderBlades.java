package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;

/**
 * Prominent and flat shoulder blades: the back is cut from the shoulder dart to the blade and on to a hinge on the armhole, and swung,
 * so that the dart grows or shrinks. A shoulder without a dart gets one.
 */
final class ShoulderBlades {

    /** A dart that holds less than this is none, mm. */
    private static final double LEAST_DART_MM = 2;

    /** A new dart begins so far along the shoulder from the neck (common practice: near the middle). */
    private static final double NEW_DART_SHARE = 0.42;

    /** A new dart ends so much of the way to the blade (common practice: short of it). */
    private static final double NEW_DART_REACH = 0.8;

    static final Entry ENTRY = Entry.named(
                    "shoulder blades", Family.BODICE, Stage.BACK, PieceKind.BODICE_BACK, PieceKind.DRESS_BACK)
            .calledForBy(Measure.ACROSS_BACK_WIDTH)
            .folds("strain over the shoulder blades, with folds from them to neck and armhole")
            .amount(
                    "enlarges the back shoulder dart by the amount at the seam",
                    "makes the back shoulder dart smaller by the amount at the seam")
            .moves("the back shoulder outside its dart, and the armhole above the hinge")
            .sharing("the full amount in the dart of each half back")
            .pin("hinge on the armhole stitching line at the across back level")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.NECK),
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.CENTRE))
            .alsoStays("the front")
            .trued("dart legs are drawn of one length; the armhole is drawn smooth at the hinge")
            .source("[HERR32] by name; common practice")
            .amounts(6.35, 12.7)
            .doneBy(Maker.each(UpperPart.BACKS, ShoulderBlades::steps));

    private ShoulderBlades() {}

    private static void steps(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Spot blade = new Spot(part.corners.landmark(Landmark.BLADE_POINT), "shoulder blade point");
        Place hinge = part.across();
        Place corner = part.shoulderTip();
        Optional<Dart.EdgeDart> dart = part.corners.dartOn(EdgeRole.SHOULDER);
        double whole = part.length(corner);
        double outer = dart.isPresent() ? part.plainFrom(corner) : (1 - NEW_DART_SHARE) * whole;
        double inner = outer + dart.map(Dart.EdgeDart::mouthMm).orElse(0.0);
        Point outerLeg = part.at(corner, outer, "").on(piece);
        Point innerLeg = part.at(corner, inner, "").on(piece);
        double wide = outerLeg.distanceTo(innerLeg) + mm;
        Point pin = hinge.on(piece);
        Point wanted = UpperPart.struck(
                        new UpperPart.Arc(pin, pin.distanceTo(outerLeg)),
                        new UpperPart.Arc(innerLeg, Math.max(wide, LEAST_DART_MM)),
                        outerLeg)
                .filter(p -> wide >= LEAST_DART_MM)
                .orElseThrow(() ->
                        part.refusal("shoulder dart", mm, "the dart cannot become so much smaller; take half of it."));

        List<Spot> turns = new ArrayList<>();
        dart.ifPresent(d -> turns.add(new Spot(d.apex(), "point of the shoulder dart")));
        turns.add(blade);
        String word = dart.isPresent() ? "leg of the shoulder dart nearer the armhole" : "slash at the shoulder";
        Place leg = part.at(corner, outer, word);
        list.cut("shoulder side", leg, turns, hinge, part.at(corner, 1, "shoulder"));
        list.add(new Step.Spread(
                Spot.of(piece, hinge), new Until.MovesAcross(Spot.of(piece, leg), wanted.x() - outerLeg.x())));
        Place top = part.armholeTop();
        part.trace(top, 0, part.from(top, hinge));
        part.trace(corner, 0, outer);
        part.join(corner, outer, inner, dart.isPresent() ? JoinForm.REFIT : JoinForm.STRAIGHT);
        if (dart.isEmpty()) {
            double along = part.corners.isStart(corner) ? outer : whole - outer;
            Spot point = new Spot(innerLeg.towards(blade.at(), NEW_DART_REACH), "short of the shoulder blade point");
            list.add(new Step.NewDart("shoulder dart", new Stretch(corner.edge(), along, along), point));
        }
    }
}
