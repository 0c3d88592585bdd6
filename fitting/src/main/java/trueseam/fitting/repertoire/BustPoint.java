package trueseam.fitting.repertoire;

import java.util.Optional;
import java.util.Set;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;

/** The bust point higher or lower, in or out: the darts go with it, moved as a whole or aimed anew. */
final class BustPoint {

    /** How much of the piece round bust point and dart point goes with a box. */
    private static final double ROUND_MM = 6;

    private static final String AS_A_WHOLE =
            "the dart keeps its slant (common practice; the usual way); under the deep armhole of a kimono it is aimed";
    private static final String AIMED = "the mouth of the dart stays and only its point goes (common practice)";

    static final Entry HEIGHT = named("bust point height", UpperKinds.FRONTS_WITH_NECK_POINT)
            .solvedFor(Measure.BUST_POINT_HEIGHT)
            .folds(
                    "the fullness of the front sits above or below the bust",
                    "a diagonal fold from the armhole to the bust")
            .amount("lowers the bust point and the darts with it", "raises the bust point and the darts with it")
            .moves("the side dart; the point of the waist dart")
            .sharing("the full amount, not shared")
            .variant(
                    "move the dart",
                    AS_A_WHOLE,
                    Maker.each(
                            UpperKinds.FRONTS_WITH_NECK_POINT,
                            (list, piece, mm) -> height(list, new BustFront(piece), mm, false)))
            .variant(
                    "aim the dart",
                    AIMED,
                    Maker.each(
                            UpperKinds.FRONTS_WITH_NECK_POINT,
                            (list, piece, mm) -> height(list, new BustFront(piece), mm, true)))
            .written();

    static final Entry WIDTH = named("bust point width", UpperKinds.FRONTS)
            .solvedFor(Measure.BUST_POINT_WIDTH)
            .folds("the darts end beside the fullest part of the bust")
            .amount("sets the bust points farther apart", "sets the bust points nearer together")
            .moves("the waist dart; the point of the side dart")
            .sharing("N/2 on each half front")
            .variant(
                    "move the dart",
                    AS_A_WHOLE,
                    Maker.each(UpperKinds.FRONTS, (list, piece, mm) -> width(list, new BustFront(piece), mm, false)))
            .variant(
                    "aim the dart",
                    AIMED,
                    Maker.each(UpperKinds.FRONTS, (list, piece, mm) -> width(list, new BustFront(piece), mm, true)))
            .written();

    private BustPoint() {}

    private static EntryBuilder named(String name, Set<PieceKind> on) {
        return Entry.named(name, Family.BODICE, Stage.BUST, on)
                .pin("a box round the dart slides, or turns about the middle of the dart's mouth")
                .stays(
                        Stay.front(EdgeRole.SIDE),
                        Stay.front(EdgeRole.ARMHOLE),
                        Stay.front(EdgeRole.WAIST),
                        Stay.front(EdgeRole.SHOULDER))
                .alsoStays("what the darts take up")
                .trued(
                        "the dart's legs are of one length and end 1/2 to 1 in short of the bust point; its cap is drawn anew")
                .source("[HERR32]; short of the point [ECOURSE]; common practice")
                .amounts(12.7, 31.75);
    }

    private static void height(StepList list, BustFront front, double mm, boolean aim) {
        Point bust = front.bust.at();
        Point goesTo = new Point(bust.x(), bust.y() - mm);
        Optional<Dart.EdgeDart> side = front.sideDart();
        Point carried = bust;
        if (side.isPresent()) {
            Point apex = side.get().apex();
            double inner = front.up ? Math.min(bust.x(), apex.x()) - ROUND_MM : Math.max(bust.x(), apex.x()) + ROUND_MM;
            Point low = new Point(inner, Math.min(bust.y(), apex.y()) - ROUND_MM);
            Point high = new Point(inner, Math.max(bust.y(), apex.y()) + ROUND_MM);
            DartBox box = new DartBox(front.piece, side.get(), front.up ? low : high, front.up ? high : low);
            carried = (aim || isCloseUnderTheArm(front.piece) ? box.turn(list, 0, -mm) : box.slide(list, 0, -mm))
                    .apply(bust);
            lowerWaistDart(list, front, mm, low.y());
        } else {
            lowerWaistDart(list, front, mm, Double.POSITIVE_INFINITY);
        }
        remarkBust(list, carried, goesTo);
        if (front.piece.level(LevelName.BUST).isPresent()) {
            list.add(new Step.Remark(Step.Inside.LEVEL, LevelName.BUST.word(), 0, -mm));
        }
    }

    /** Under a deep armhole there is no room beside the dart to move it in. */
    private static boolean isCloseUnderTheArm(Piece piece) {
        return piece.kind().isKimono();
    }

    /** A waist dart's point goes with the bust point; what lies in the box went with it already. */
    private static void lowerWaistDart(StepList list, BustFront front, double mm, double boxFromY) {
        front.corners.dartOn(EdgeRole.WAIST).ifPresent(dart -> {
            if (dart.apex().y() < boxFromY) {
                list.add(new Step.Remark(Step.Inside.DART_POINT, dart.name(), 0, -mm));
            }
        });
        front.diamond().ifPresent(dart -> {
            if (dart.top().y() < boxFromY) {
                list.add(new Step.Remark(Step.Inside.DART_POINT, dart.name(), 0, -mm));
            }
        });
    }

    private static void width(StepList list, BustFront front, double mm, boolean aim) {
        double across = front.corners.outward() * mm / 2;
        Point bust = front.bust.at();
        front.corners.dartOn(EdgeRole.WAIST).ifPresent(dart -> {
            Point apex = dart.apex();
            double half = ROUND_MM + dart.mouthMm() / 4;
            Point left = new Point(apex.x() - half, apex.y() + 1);
            Point right = new Point(apex.x() + half, apex.y() + 1);
            // The outline runs anticlockwise, so that the waist line runs to the right whichever way the piece lies.
            DartBox box = new DartBox(front.piece, dart, left, right);
            if (aim) {
                box.turn(list, across, 0);
            } else {
                box.slide(list, across, 0);
            }
        });
        front.diamond().ifPresent(dart -> list.add(new Step.Remark(Step.Inside.DART_POINT, dart.name(), across, 0)));
        front.sideDart().ifPresent(dart -> list.add(new Step.Remark(Step.Inside.DART_POINT, dart.name(), across, 0)));
        remarkBust(list, bust, new Point(bust.x() + across, bust.y()));
    }

    private static void remarkBust(StepList list, Point carried, Point goesTo) {
        double across = goesTo.x() - carried.x();
        double along = goesTo.y() - carried.y();
        if (across != 0 || along != 0) {
            list.add(new Step.Remark(Step.Inside.LANDMARK, Landmark.BUST_POINT, across, along));
        }
    }
}
