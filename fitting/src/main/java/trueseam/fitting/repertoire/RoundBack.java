package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Round back, dowager's hump and erect back: the back opened or lapped at its centre, so that it grows or shrinks along the spine and
 * not at the sides.
 */
final class RoundBack {

    /** How far towards the hinge the opening turns up to the neck dart, of the way from the mouth to the hinge. */
    private static final double TURN_SHARE = 0.15;

    /** A hump is opened a third of the way from the neck to the across back level [DM1911]. */
    private static final double HUMP_SHARE = 1.0 / 3;

    /** How far the slash passes below the point of a shoulder dart, mm. */
    private static final double BELOW_DART_MM = 6;

    static final Entry ROUND = Entry.named(
                    "round back", Family.BODICE, Stage.BACK, PieceKind.BODICE_BACK, PieceKind.DRESS_BACK)
            .calledForBy(Measure.BACK_WAIST_LENGTH)
            .folds(
                    "the back stands away at the waist, with folds from the underarm to the shoulder blade",
                    "the hem lifts at the centre back and the neck stands away")
            .amount("raises the neck at the centre back", "")
            .moves("the back above the across back level; its neck dart or shoulder dart")
            .sharing("the full amount on the half back, at its centre, to nothing at the armhole")
            .pin("hinge on the armhole stitching line at the across back level")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.SIDE),
                    Stay.front(EdgeRole.NECK))
            .alsoStays("the front; with a dart the neck line too")
            .trued(
                    "the centre back stays straight on the fold; the gained width goes into a dart or is eased at the neck")
            .source("common practice; line [DM1911]; amounts [HERTZ]")
            .amounts(6.35, 19.05)
            .variant(
                    "neck dart",
                    "the gained width is sewn into a dart at the neck, where a collar hides it (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> across(list, piece, mm, false)))
            .variant(
                    "shoulder dart",
                    "the shoulder dart takes the gained width: for round shoulders and a bare neck (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> across(list, piece, mm, true)))
            .variant(
                    "neck ease",
                    "the neck line keeps the gained width, to be eased to collar or facing: for a small amount (common practice)",
                    Maker.each(UpperPart.BACKS, RoundBack::neckLine))
            .written();

    static final Entry HUMP = Entry.named(
                    "dowager's hump", Family.BODICE, Stage.BACK, PieceKind.BODICE_BACK, PieceKind.DRESS_BACK)
            .calledForBy(Measure.BACK_WAIST_LENGTH)
            .folds("the neck cuts in front and stands away behind, with folds below the nape")
            .amount("raises the neck at the centre back", "")
            .moves("the back above a line a third of the way from the neck to the across back level; its neck dart")
            .sharing("the full amount on the half back, at its centre, to nothing at the shoulder point")
            .pin("hinge at the shoulder point")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.SIDE),
                    Stay.front(EdgeRole.NECK))
            .alsoStays("the front; the back below the line")
            .trued(
                    "the centre back stays straight on the fold; the gained width goes into a dart or is eased at the neck")
            .source("[HERR32] by name; line [DM1911]; common practice")
            .amounts(6.35, 19.05)
            .variant(
                    "neck dart",
                    "the gained width is sewn into a small dart at the neck (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> hump(list, piece, mm, true)))
            .variant(
                    "neck ease",
                    "so near the neck there is little to gain: the neck line keeps it (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> hump(list, piece, mm, false)))
            .written();

    static final Entry ERECT = Entry.named(
                    "erect back", Family.BODICE, Stage.BACK, PieceKind.BODICE_BACK, PieceKind.DRESS_BACK)
            .calledForBy(Measure.BACK_WAIST_LENGTH)
            .folds("folds across the upper back", "the hem drops at the centre back")
            .amount("lowers the neck at the centre back", "")
            .moves("the back above the across back level; its shoulder dart or its neck line")
            .sharing("the full amount on the half back, at its centre")
            .pin("hinge on the armhole stitching line at the across back level")
            .stays(
                    Stay.front(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.SIDE),
                    Stay.front(EdgeRole.NECK))
            .alsoStays("the front; the back armhole, where the lap runs out there")
            .trued("the centre back stays straight on the fold")
            .source("common practice; all the way across [HERTZ]")
            .amounts(6.35, 12.7)
            .variant(
                    "shoulder dart",
                    "the shoulder dart gives up what the lap takes, and the neck stays (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> across(list, piece, -mm, true)))
            .variant(
                    "neck",
                    "for a back without a shoulder dart: the neck line loses it at the centre and is then fitted as a neck"
                            + " (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> neckLine(list, piece, -mm)))
            .variant(
                    "all across",
                    "the back armhole is shortened by as much as the centre back [HERTZ]; the sleeve follows",
                    Maker.each(UpperPart.BACKS, RoundBack::allAcross),
                    EdgeRole.ARMHOLE)
            .written();

    private RoundBack() {}

    private static void across(StepList list, Piece piece, double mm, boolean shoulder) {
        UpperPart part = new UpperPart(list, piece);
        Place hinge = part.across();
        double y = hinge.on(piece).y();
        BackOpening opening = new BackOpening(
                list,
                part,
                mm,
                BackOpening.centreAt(part, y, "centre back at the across back level"),
                List.of(),
                hinge);
        if (shoulder) {
            opening.intoShoulder(new Spot(part.corners.landmark(Landmark.BLADE_POINT), "shoulder blade point"));
        } else {
            opening.intoNeck(turn(part, hinge, y));
        }
    }

    private static void neckLine(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place hinge = part.across();
        Place centre = BackOpening.centreAt(part, hinge.on(piece).y(), "centre back at the across back level");
        new BackOpening(list, part, mm, centre, List.of(), hinge).intoNeckLine();
    }

    private static void hump(StepList list, Piece piece, double mm, boolean dart) {
        UpperPart part = new UpperPart(list, piece);
        Place hinge = part.armholeTop();
        double neck = part.centreTop().on(piece).y();
        double y = neck - HUMP_SHARE * (neck - part.across().on(piece).y());
        Place centre = BackOpening.centreAt(part, y, "centre back at the hump");
        List<Spot> slash = belowDart(part, y);
        if (dart) {
            new BackOpening(list, part, mm, centre, slash, hinge).intoNeck(turn(part, hinge, y));
        } else {
            new BackOpening(list, part, mm, centre, slash, hinge).intoNeckLine();
        }
    }

    private static void allAcross(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        new BackTuck(list, part).lower(mm);
    }

    /** Where the slash turns up: a little farther out than the mouth of the neck dart; at the dart's own point if that lies lower. */
    private static Spot turn(UpperPart part, Place hinge, double y) {
        Place corner = part.neckCentre();
        List<Dart.EdgeDart> darts = part.dartsFrom(corner);
        Point mouth = darts.isEmpty()
                ? part.at(corner, part.length(corner) / 2, "").on(part.piece)
                : darts.get(0).apex();
        if (mouth.y() <= y) {
            return new Spot(mouth, "point of the neck dart");
        }
        return new Spot(
                new Point(mouth.x() + TURN_SHARE * (hinge.on(part.piece).x() - mouth.x()), y), "turn of the slash");
    }

    /** The slash passes below a shoulder dart that reaches down to it. */
    private static List<Spot> belowDart(UpperPart part, double y) {
        Optional<Dart.EdgeDart> dart = part.corners.dartOn(EdgeRole.SHOULDER);
        return dart.filter(d -> d.apex().y() < y)
                .map(d -> List.of(new Spot(d.apex().plus(new Vec(0, -BELOW_DART_MM)), "below the shoulder dart")))
                .orElse(List.of());
    }
}
