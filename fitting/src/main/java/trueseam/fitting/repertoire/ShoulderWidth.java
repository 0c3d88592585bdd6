package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Broad and narrow shoulders: the shoulder point goes out or in along the seam, front and back alike. */
final class ShoulderWidth {

    /** How much of the shoulder seam is ruled new beside its point, mm. */
    private static final double RULED_MM = 40;

    /** So much of a seam is left of what is ruled, or beside a dart, mm. */
    private static final double LEAST_MM = 15;

    static final Entry ENTRY = Entry.named(
                    "shoulder width",
                    Family.BODICE,
                    Stage.SHOULDER,
                    PieceKind.BODICE_FRONT,
                    PieceKind.BODICE_BACK,
                    PieceKind.DRESS_FRONT,
                    PieceKind.DRESS_BACK)
            .solvedFor(Measure.SHOULDER_LENGTH)
            .folds("the armhole seam lies off the shoulder joint", "the shoulder seam is pulled off the neck")
            .amount("moves the shoulder point out along the seam", "moves the shoulder point in along the seam")
            .moves("the shoulder point and the armhole, front and back alike")
            .sharing("the full amount on each shoulder, front and back alike")
            .pin("underarm point; or no pin: a slide along the shoulder seam")
            .stays(Stay.all(EdgeRole.NECK), Stay.all(EdgeRole.SIDE))
            .alsoStays(
                    "the length of the armhole, as far as it can be drawn; the underarm; along the seam the slope of the shoulder")
            .trued("the shoulder is ruled from the neck point to the new shoulder point")
            .source("common practice")
            .amounts(6.35, 12.7)
            .variant(
                    "along the seam",
                    "keeps the slope of the shoulder: the armhole above its notch goes with the point, and below is drawn in its length, hollower or flatter;"
                            + " where it would become too flat or too full the sleeve follows it instead (common practice)",
                    Maker.each(UpperPart.ALL, ShoulderWidth::alongSeam),
                    EdgeRole.ARMHOLE)
            .variant(
                    "pivot",
                    "keeps the shape of the armhole, which rides about the underarm: a broader shoulder gets a little flatter"
                            + " (common practice)",
                    Maker.each(UpperPart.ALL, ShoulderWidth::pivot))
            .written();

    private ShoulderWidth() {}

    private static void alongSeam(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place tip = part.shoulderTip();
        Place top = part.armholeTop();
        Vec out = part.leaving(tip).reversed().times(mm);
        double ruled = ruled(part, tip, mm);
        Place base = part.armholeBase();
        double lower = part.from(base, part.across());
        list.add(new Step.Slide(out.x(), out.y()));
        part.trace(top, 0, part.from(top, part.across()));
        list.add(new Step.LayBack());
        part.join(tip, 0, ruled, JoinForm.STRAIGHT);
        part.joinNearLength(base, 0, lower, Motion.NONE, Motion.slide(out), lower);
    }

    private static double ruled(UpperPart part, Place tip, double mm) {
        double ruled = Math.min(Math.max(RULED_MM, LEAST_MM - mm), part.plainFrom(tip) - LEAST_MM / 2);
        if (ruled + mm < LEAST_MM / 2) {
            throw part.refusal(
                    "shoulder", mm, "the shoulder seam is too short to lose so much; take the next smaller size.");
        }
        return ruled;
    }

    private static void pivot(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place tip = part.shoulderTip();
        Place top = part.armholeTop();
        Place base = part.armholeBase();
        double plain = part.plainFrom(tip);
        Point shoulder = top.on(piece);
        Point pin = base.on(piece);
        Point inner = part.at(tip, plain, "").on(piece);
        Point wanted = UpperPart.struck(
                        new UpperPart.Arc(pin, pin.distanceTo(shoulder)),
                        new UpperPart.Arc(inner, plain + mm),
                        shoulder)
                .orElseThrow(() -> part.refusal(
                        "shoulder", mm, "the shoulder point cannot turn so far; take less, or the next size."));
        list.add(new Step.Pin(base));
        list.add(new Step.Pivot(new Until.MovesAcross(Spot.of(piece, top), wanted.x() - shoulder.x())));
        part.traceWhole(top);
        part.join(tip, 0, plain, JoinForm.STRAIGHT);
    }
}
