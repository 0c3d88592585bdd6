package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.OutOfReachException;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Broad and narrow back: by a pivot of the armhole above its notch, or by a slash from the shoulder down, where the back shoulder and the
 * front shoulder then share what the slash gave to one of them.
 */
final class AcrossBack {

    /** A line is drawn new to so far on either side of a slash, mm. */
    private static final double BESIDE_SLASH_MM = 15;

    /** The top of the armhole is drawn new beside the shoulder, so that their corner keeps its angle, mm. */
    private static final double CORNER_MM = 35;

    /** A dart that holds less than this is none, mm. */
    private static final double LEAST_DART_MM = 2;

    static final Entry ENTRY = Entry.named(
                    "across back", Family.BODICE, Stage.BACK, PieceKind.BODICE_BACK, PieceKind.DRESS_BACK)
            .solvedFor(Measure.ACROSS_BACK_WIDTH)
            .folds("strain across the back when the arms reach forward", "up and down folds beside the back armhole")
            .amount("makes the back broader between the armholes", "makes the back narrower between the armholes")
            .moves("the back armhole; with a slash the side of the back, and the shoulder point of back and front")
            .sharing("N/2 on each half back; with a slash the shoulder seam takes N/4, on back and front alike")
            .pin("shoulder point, turned to the notch; or a slash from the shoulder to the lower edge")
            .stays(Stay.front(EdgeRole.ARMHOLE), Stay.all(EdgeRole.NECK), Stay.all(EdgeRole.SIDE))
            .alsoStays(
                    "the length of the back armhole, as far as it can be drawn; the centres; with the pivot the shoulder and the underarm"
                            + " too")
            .trued("the armhole is drawn smooth at its notch; with a slash the shoulders are ruled and walked")
            .source("slash and shoulder [ND1921]; pivot common practice")
            .amounts(12.7, 25.4)
            .variant(
                    "pivot",
                    "for a broad back under a shoulder and a side that fit: only the armhole moves; where it would become too flat"
                            + " or too full the sleeve follows it instead (common practice)",
                    Maker.each(UpperPart.BACKS, AcrossBack::pivot),
                    EdgeRole.ARMHOLE)
            .variant(
                    "slash",
                    "for a back that is broad from the shoulder to the waist: the half back is slashed and spread by N/2, N/4 comes"
                            + " off its armhole at the shoulder and N/4 is added to the front armhole there, to nothing at the"
                            + " notch [ND1921]",
                    Maker.each(UpperPart.ALL, AcrossBack::slash))
            .variant(
                    "into the shoulder dart",
                    "the same slash, but the shoulder point stays on its line and the dart of the back shoulder takes what opens: for blades that"
                            + " stand out as well (common practice; trimmed to front and back instead in [ND1921])",
                    Maker.each(UpperPart.BACKS, AcrossBack::intoDart))
            .written();

    private AcrossBack() {}

    /** Turns the armhole above the across level about the shoulder point. */
    static void pivot(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        String mark = piece.kind().isBack() ? "across back mark" : "across front mark";
        Place notch = part.across();
        Place top = part.armholeTop();
        Place base = part.armholeBase();
        list.add(new Step.Mark(mark, notch, part.out * mm / 2, 0));
        list.add(new Step.Pin(top));
        list.add(new Step.Pivot(new Until.MeetsAcross(notch, mark)));
        double upper = part.from(top, notch);
        double corner = Math.min(CORNER_MM, upper / 2);
        part.trace(top, corner, upper);
        Motion turned = turn(part, top.on(piece), notch.on(piece), part.out * mm / 2, mm);
        part.joinNearLength(top, 0, corner, Motion.NONE, turned, corner);
        double lower = part.from(base, notch);
        part.joinNearLength(base, 0, lower, Motion.NONE, turned, lower);
    }

    static Motion turn(UpperPart part, Point pin, Point place, double acrossMm, double mm) {
        try {
            return Motion.pivotAcross(pin, place, acrossMm);
        } catch (OutOfReachException e) {
            throw part.refusal("armhole", mm, "the armhole cannot turn so far; take less, or the next size.");
        }
    }

    private static void slash(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        if (piece.kind().isBack()) {
            slashBack(list, part, mm);
        } else {
            swingTop(list, part, Vec.ZERO, mm);
        }
    }

    private static void slashBack(StepList list, UpperPart part, double mm) {
        Piece piece = part.piece;
        Place tip = part.shoulderTip();
        Place top = part.at(tip, part.plainFrom(tip) / 2, "slash at the shoulder");
        Place corner = lowerCorner(part);
        double low = below(part, corner, top.on(piece), mm);
        double spread = part.out * mm / 2;
        cutSide(list, part, top, corner, low);
        list.add(new Step.Slide(spread, 0));
        part.traceWhole(part.corners.underarm());
        part.trace(corner, 0, low - BESIDE_SLASH_MM);
        part.trace(part.armholeBase(), 0, part.from(part.armholeBase(), part.across()));
        joinBelow(part, corner, low);
        swingTop(list, part, new Vec(spread, 0), mm);
        list.add(new Step.Pivot(new Until.GrainUpright()));
    }

    /** The side of the back slides out from the outer leg of the shoulder dart, whose mouth grows by as much. */
    private static void intoDart(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place tip = part.shoulderTip();
        Dart.EdgeDart dart = part.dartsFrom(tip).stream()
                .findFirst()
                .orElseThrow(() -> part.refusal(
                        "shoulder",
                        mm,
                        "there is no dart in the back shoulder to take it; use the slash or the pivot."));
        if (dart.mouthMm() + mm / 2 < LEAST_DART_MM) {
            throw part.refusal(
                    dart.name(),
                    mm,
                    "the dart does not hold so much; take what it holds, or use the slash or the pivot.");
        }
        double leg = part.plainFrom(tip);
        Place top = part.at(tip, leg, "leg of the shoulder dart nearer the armhole");
        Place corner = lowerCorner(part);
        double low = below(part, corner, top.on(piece), mm);
        cutSide(list, part, top, corner, low);
        list.add(new Step.Slide(part.out * mm / 2, 0));
        part.traceWhole(part.corners.underarm());
        part.trace(corner, 0, low - BESIDE_SLASH_MM);
        part.traceWhole(part.armholeBase());
        part.trace(tip, 0, leg);
        joinBelow(part, corner, low);
        list.join(dart.edge(), dart.fromMm(), dart.toMm(), JoinForm.REFIT);
    }

    private static Place lowerCorner(UpperPart part) {
        return part.corners.at(
                part.piece.kind().isDress() ? EdgeRole.HEM : EdgeRole.WAIST, EdgeRole.SIDE, "lower corner of the side");
    }

    private static void cutSide(StepList list, UpperPart part, Place top, Place corner, double low) {
        list.cut(
                "side of the back",
                top,
                List.of(),
                part.at(corner, low, "slash at the lower edge"),
                part.corners.underarm());
    }

    private static void joinBelow(UpperPart part, Place corner, double low) {
        part.join(
                corner,
                low - BESIDE_SLASH_MM,
                low + BESIDE_SLASH_MM,
                JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }

    /** Turns the armhole above its notch until the shoulder seam is N/4 longer, and rules the seam. */
    private static void swingTop(StepList list, UpperPart part, Vec slid, double mm) {
        Place notch = part.across();
        Place top = part.armholeTop();
        Place tip = part.shoulderTip();
        double plain = part.plainFrom(tip);
        Point shoulder = top.on(part.piece).plus(slid);
        Point pin = notch.on(part.piece).plus(slid);
        Point inner = part.at(tip, plain, "").on(part.piece);
        Point wanted = UpperPart.struck(
                        new UpperPart.Arc(pin, pin.distanceTo(shoulder)),
                        new UpperPart.Arc(inner, plain + mm / 4),
                        shoulder)
                .orElseThrow(() -> part.refusal(
                        "shoulder", mm, "the shoulder point cannot turn so far; take less, or the next size."));
        list.add(new Step.Pin(notch));
        list.add(new Step.Pivot(new Until.MovesAcross(Spot.of(part.piece, top), wanted.x() - shoulder.x())));
        part.trace(top, 0, part.from(top, notch));
        part.join(tip, 0, plain, JoinForm.STRAIGHT);
    }

    /** Where the slash comes out below, from the side corner: straight below, beside the darts. */
    private static double below(UpperPart part, Place corner, Point above, double mm) {
        double plain = part.plainFrom(corner);
        double wanted = part.piece.edge(corner.edge()).path().crossings(above, new Vec(0, 1)).stream()
                .map(PathPlace::alongMm)
                .map(along -> Math.abs(along - corner.alongMm()))
                .findFirst()
                .orElse(plain / 2);
        if (plain < 3 * BESIDE_SLASH_MM) {
            throw part.refusal(corner.edge(), mm, "there is no room for a slash beside the dart; use the pivot.");
        }
        return Math.max(1.5 * BESIDE_SLASH_MM, Math.min(wanted, plain - 1.5 * BESIDE_SLASH_MM));
    }
}
