package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Vec;

/**
 * Forward and backward shoulder: the seam goes down in front and up at the back, so that it lies on the ridge of the shoulder; what the
 * front armhole loses the back one gains, and the cap follows.
 */
final class ForwardShoulder {

    /** The part of armhole or neck line that is drawn new beside the seam, of what lies between it and the notch or centre. */
    private static final double BESIDE_SHARE = 0.8;

    static final Entry ENTRY = Entry.named(
                    "forward shoulder",
                    Family.BODICE,
                    Stage.SHOULDER,
                    PieceKind.BODICE_FRONT,
                    PieceKind.BODICE_BACK,
                    PieceKind.DRESS_FRONT,
                    PieceKind.DRESS_BACK)
            .folds("the shoulder seam lies behind the ridge of the shoulder", "pulls at the front armhole")
            .amount("moves the shoulder seam forward at the armhole", "moves the shoulder seam back at the armhole")
            .moves("the shoulder seam; the top of both armholes; the crown of the sleeve")
            .sharing("the full amount down in front and the full amount up at the back")
            .pin("neck point, front and back")
            .stays(Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.SIDE))
            .alsoStays(
                    "both armholes together; the neck line, if the seam turns about its point; the width of the sleeve")
            .lengthens(EdgeRole.ARMHOLE)
            .trued("the tops of the armholes are drawn smooth; the cap gets its crown as far forward")
            .source("common practice")
            .amounts(6.35, 12.7)
            .variant(
                    "tapered",
                    "for shoulders that are forward at the joint: nothing at the neck (common practice)",
                    Maker.each(UpperPart.ALL, ForwardShoulder::tapered))
            .variant(
                    "parallel",
                    "where the neck leans forward too: the whole seam moves, at the neck as well (common practice)",
                    Maker.each(UpperPart.ALL, ForwardShoulder::parallel),
                    EdgeRole.NECK)
            .written();

    private ForwardShoulder() {}

    private static double up(Piece piece, double mm) {
        return piece.kind().isFront() ? -mm : mm;
    }

    private static void tapered(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place tip = part.shoulderTip();
        double up = up(piece, mm);
        list.add(new Step.Mark("shoulder mark", tip, 0, up));
        list.add(new Step.Pin(part.shoulderNeck()));
        list.add(new Step.Pivot(new Until.MeetsAlong(tip, "shoulder mark")));
        part.traceWhole(tip);
        Motion turned = part.turnedUp(part.shoulderNeck(), tip, up);
        new NeckDrawing(list, part).besideTurned(turned, mm);
        drawBeside(part, part.armholeTop(), part.from(part.armholeTop(), part.across()), turned, up, mm);
    }

    private static void parallel(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        double up = up(piece, mm);
        list.add(new Step.Slide(0, up));
        part.traceWhole(part.shoulderTip());
        Motion slid = Motion.slide(new Vec(0, up));
        drawBeside(part, part.armholeTop(), part.from(part.armholeTop(), part.across()), slid, up, mm);
        double neck = up * Math.abs(part.leaving(part.neckTop()).y());
        drawBeside(part, part.neckTop(), part.length(part.neckTop()), slid, neck, mm);
    }

    /** An edge that meets the seam gets as much longer or shorter as the seam went up or down. */
    private static void drawBeside(UpperPart part, Place corner, double reach, Motion seam, double up, double mm) {
        double drawn = BESIDE_SHARE * reach;
        part.joinOfLength(corner, 0, drawn, seam, Motion.NONE, drawn + up, mm);
    }
}
