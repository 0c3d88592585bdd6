package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Vec;

/** A back that is larger or smaller below the armholes: the side of the back alone goes out, so that the seam hangs farther forward. */
final class BackBelowArmhole {

    private static final double LEAST_DART_MM = 2;

    /** Where no dart takes it, the lower edge is drawn new over this share, from the side. */
    private static final double LOWER_SHARE = 0.6;

    static final Entry ENTRY = Entry.named(
                    "back below armholes", Family.BODICE, Stage.BACK, PieceKind.BODICE_BACK, PieceKind.DRESS_BACK)
            .calledForBy(Measure.BUST_GIRTH, Measure.UPPER_CHEST_GIRTH)
            .folds("the side seam swings forward below the armhole", "pull lines from the back armhole to the side")
            .amount("makes the back wider below the armholes", "makes the back narrower below the armholes")
            .moves("the back side seam, from the underarm down")
            .sharing("N/2 on each half back; the front takes nothing")
            .pin("shoulder point, on the back only; then a slide across the grain")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.SIDE),
                    Stay.front(EdgeRole.WAIST))
            .alsoStays("the levels; the whole front")
            .trued("the armhole is drawn smooth between notch and underarm, in its length")
            .source("[HERR32] by name; common practice")
            .amounts(12.7, 25.4)
            .variant(
                    "dart",
                    "the back waist fits: its dart takes what the side gave; without a waist dart the waist grows too (common"
                            + " practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> steps(list, piece, mm, true)))
            .variant(
                    "straight down",
                    "the back is wider at the waist too (common practice)",
                    Maker.each(UpperPart.BACKS, (list, piece, mm) -> steps(list, piece, mm, false)))
            .written();

    private BackBelowArmhole() {}

    private static void steps(StepList list, Piece piece, double mm, boolean byDart) {
        UpperPart part = new UpperPart(list, piece);
        Place top = part.armholeTop();
        Place base = part.armholeBase();
        Place notch = part.across();
        double wide = part.out * mm / 2;
        list.add(new Step.Mark("underarm mark", base, wide, 0));
        list.add(new Step.Pin(top));
        list.add(new Step.Pivot(new Until.MeetsAcross(base, "underarm mark")));
        part.trace(top, 0, part.from(top, notch));
        list.add(new Step.LayBack());
        list.add(new Step.Slide(wide, 0));
        part.traceWhole(part.corners.underarm());
        double lower = part.from(base, notch);
        Motion turned = AcrossBack.turn(part, top.on(piece), base.on(piece), wide, mm);
        part.joinOfLength(base, 0, lower, Motion.slide(new Vec(wide, 0)), turned, lower, mm);
        Place corner = part.corners.at(
                piece.kind().isDress() ? EdgeRole.HEM : EdgeRole.WAIST, EdgeRole.SIDE, "lower corner of the side");
        List<Dart.EdgeDart> darts = part.dartsFrom(corner);
        if (byDart && !darts.isEmpty()) {
            Dart.EdgeDart dart = darts.get(0);
            if (dart.mouthMm() + mm / 2 < LEAST_DART_MM) {
                throw part.refusal(
                        dart.name(),
                        mm,
                        "the dart does not hold so much; take less, or go straight down and take in the waist.");
            }
            part.trace(corner, 0, part.plainFrom(corner));
            list.join(dart.edge(), dart.fromMm(), dart.toMm(), JoinForm.REFIT);
        } else {
            double far = darts.isEmpty() ? LOWER_SHARE * part.length(corner) : part.plainFrom(corner);
            part.join(corner, 0, far, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        }
    }
}
