package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;

/**
 * Square and sloping shoulders: the seam turns about the neck point, and the armhole goes up or down with the shoulder point, its
 * underarm too, so that it stays as deep as it was.
 */
final class ShoulderSlope {

    /** The top of the armhole that goes with the shoulder point as it is drawn, mm. */
    private static final double TOP_MM = 25;

    /** How much of the neck line goes with the neck point as it is drawn, and with the centre. */
    private static final double NECK_SHARE = 0.08;

    /** How much of the side seam is drawn new below the underarm, mm. */
    private static final double SIDE_MM = 60;

    static final Entry SQUARE = begun("square shoulder")
            .folds("diagonal pulls from the shoulder tip to the centre", "a wrinkle across the upper chest")
            .amount("raises the shoulder point, and the armhole with it", "")
            .variant(
                    "armhole end",
                    "raise the shoulder point and the armhole with its underarm: for a heavy figure too [WSU2246]",
                    Maker.each(UpperPart.ALL, (list, piece, mm) -> withArmhole(list, piece, mm)),
                    EdgeRole.SIDE)
            .variant(
                    "neck end",
                    "for a slender figure take the seam up at the neck instead: the neck goes down, all else stays [WSU2246]",
                    Maker.each(UpperPart.ALL, (list, piece, mm) -> atNeck(list, piece, mm)))
            .variant(
                    "sleeveless",
                    "without a sleeve the underarm may stay: the armhole gets longer (common practice)",
                    Maker.each(UpperPart.ALL, (list, piece, mm) -> shoulderOnly(list, piece, mm)),
                    EdgeRole.ARMHOLE)
            .written();

    static final Entry SLOPING = begun("sloping shoulder")
            .folds("folds from the neck to the base of the armhole", "the armhole sags")
            .amount("lowers the shoulder point, and the armhole with it", "")
            .variant(
                    "armhole end",
                    "lower the shoulder point and the armhole with its underarm by the same amount (common practice)",
                    Maker.each(UpperPart.ALL, (list, piece, mm) -> withArmhole(list, piece, -mm)),
                    EdgeRole.SIDE)
            .variant(
                    "neck end",
                    "let the seam out at the neck instead: the neck goes up, all else stays (the inverse of [WSU2246])",
                    Maker.each(UpperPart.ALL, (list, piece, mm) -> atNeck(list, piece, -mm)))
            .variant(
                    "sleeveless",
                    "without a sleeve the underarm may stay: the armhole gets shorter (common practice)",
                    Maker.each(UpperPart.ALL, (list, piece, mm) -> shoulderOnly(list, piece, -mm)),
                    EdgeRole.ARMHOLE)
            .written();

    private ShoulderSlope() {}

    private static EntryBuilder begun(String name) {
        return Entry.named(
                        name,
                        Family.BODICE,
                        Stage.SHOULDER,
                        PieceKind.BODICE_FRONT,
                        PieceKind.BODICE_BACK,
                        PieceKind.DRESS_FRONT,
                        PieceKind.DRESS_BACK)
                .calledForBy(Measure.SHOULDER_SLOPE)
                .moves("the shoulder seam, the armhole and its underarm, front and back alike")
                .sharing("the full amount on front and back")
                .pin("neck point for the seam; a slide along the grain for the armhole")
                .stays(Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.NECK))
                .alsoStays(
                        "the length and the depth of the armhole, where the underarm goes with it; the width at the underarm")
                .trued("the side seam is drawn to the new underarm; shoulders and sides are walked")
                .source("common practice; neck end [WSU2246]; armhole [web:shoulder]")
                .amounts(6.35, 12.7);
    }

    /** The seam turned about the neck point until its end is so much higher, and the top of the armhole with it. */
    private static void swingSeam(StepList list, UpperPart part, double mm) {
        Place tip = part.shoulderTip();
        Motion turned = part.turnedUp(part.shoulderNeck(), tip, mm);
        list.add(new Step.Mark("shoulder mark", tip, 0, mm));
        list.add(new Step.Pin(part.shoulderNeck()));
        list.add(new Step.Pivot(new Until.MeetsAlong(tip, "shoulder mark")));
        part.traceWhole(tip);
        part.trace(part.armholeTop(), 0, TOP_MM);
        list.add(new Step.LayBack());
        new NeckDrawing(list, part).besideTurned(turned, mm);
    }

    private static void withArmhole(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        swingSeam(list, part, mm);
        Place top = part.armholeTop();
        double kept = part.from(top, part.across());
        // Front and back seams slant differently: half way between going equally high and the seams growing equally.
        double up = 2 * mm / (1 + Math.abs(part.leaving(part.corners.underarm()).y()));
        list.add(new Step.Slide(0, up));
        part.trace(top, kept, part.length(top));
        list.add(new Step.LayBack());
        // What this takes from the armhole, a hair's breadth, truing gives back in its hollow.
        part.join(top, TOP_MM, kept, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        Place underarm = part.corners.underarm();
        double side = Math.min(SIDE_MM, Math.min(part.plainFrom(underarm), part.length(underarm) / 2) - 5);
        if (side + mm < 10) {
            throw part.refusal("side", mm, "the side seam is too short above its dart; lower the dart first.");
        }
        part.join(underarm, 0, side, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        if (piece.level(LevelName.ACROSS).isPresent()) {
            list.add(new Step.Remark(Step.Inside.LEVEL, LevelName.ACROSS.word(), 0, up));
        }
    }

    private static void shoulderOnly(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        swingSeam(list, part, mm);
        Place top = part.armholeTop();
        part.join(top, TOP_MM, part.from(top, part.across()), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }

    /** The seam turned about the shoulder point until the neck point is so much lower; the neck line goes down with it. */
    private static void atNeck(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place neck = part.shoulderNeck();
        Motion turned = part.turnedUp(part.shoulderTip(), neck, -mm);
        list.add(new Step.Mark("neck mark", neck, 0, -mm));
        list.add(new Step.Pin(part.shoulderTip()));
        list.add(new Step.Pivot(new Until.MeetsAlong(neck, "neck mark")));
        part.traceWhole(neck);
        NeckDrawing drawing = new NeckDrawing(list, part);
        drawing.traceTop(NECK_SHARE);
        list.add(new Step.LayBack());
        drawing.traceCentre(-mm, NECK_SHARE);
        drawing.between(turned, -mm, NECK_SHARE, mm);
    }
}
