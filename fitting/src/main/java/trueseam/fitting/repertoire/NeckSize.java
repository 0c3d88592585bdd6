package trueseam.fitting.repertoire;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Vec;

/** Neck lines: larger or smaller all round, and wider at the sides for a thick base of the neck. */
final class NeckSize {

    /** How much of either end of the neck line is traced as it is, when the whole line moves. */
    private static final double ENDS_SHARE = 0.12;

    /** How much of the shoulder seam is ruled new beside the neck, at the most, mm. */
    private static final double RULED_MM = 30;

    private static final Set<PieceKind> ON = on();

    static final Entry ENTRY = begun("neck")
            .solvedFor(Measure.NECK_BASE_GIRTH)
            .folds("the neck line binds", "the neck line stands away all round")
            .amount("makes the neck line longer all round", "makes the neck line shorter all round")
            .moves("the whole neck line, front and back")
            .sharing(
                    "all round alike: the line goes out by about the amount divided by 2 pi, an eighth of an inch for 3/4 in; by somewhat"
                            + " more the more the shoulders slope")
            .pin("no pin: the line is drawn parallel to itself")
            .source("derived (trade.md 4.3, neck): a parallel line round a half circle in front and one behind")
            .amounts(12.7, 38.1)
            .doneBy((pattern, mm) -> Maker.each(ON, NeckSize::parallel).work(pattern, outMm(pattern, mm)));

    static final Entry FULL = begun("full neck")
            .calledForBy(Measure.NECK_BASE_GIRTH, Measure.NECK_GIRTH)
            .folds("the base of the neck is thick at the sides, and the neck line pulls there")
            .amount("makes the neck line longer at its sides", "makes the neck line shorter at its sides")
            .moves("the neck point, out along the shoulder, and the neck line beside it")
            .sharing("N/4 on each quarter of the neck line")
            .pin("shoulder seam line")
            .source("[HERR32] by name; common practice")
            .amounts(12.7, 25.4)
            .doneBy(Maker.each(ON, NeckSize::sides));

    private NeckSize() {}

    /** A raglan has its neck on three pieces. */
    private static Set<PieceKind> on() {
        Set<PieceKind> on = EnumSet.copyOf(UpperPart.ALL);
        on.add(PieceKind.KIMONO_FRONT);
        on.add(PieceKind.KIMONO_BACK);
        return Collections.unmodifiableSet(on);
    }

    private static EntryBuilder begun(String name) {
        return Entry.named(name, Family.BODICE, Stage.SHOULDER, ON)
                .stays(Stay.all(EdgeRole.ARMHOLE), Stay.all(EdgeRole.SIDE))
                .alsoStays("the slope of the shoulder and the shoulder point")
                .lengthens(EdgeRole.NECK)
                .trued("collar and facing by the same amount, at the centre back");
    }

    /**
     * How far the line goes out. A line parallel to another is longer by the distance times the angle that it turns through: 2 pi all
     * round where front and back meet flat at the shoulders, less by as much as the shoulders slope.
     */
    private static double outMm(Pattern pattern, double mm) {
        double turned = 0;
        for (Piece piece : pattern.pieces()) {
            if (ON.contains(piece.kind())) {
                for (Edge neck : piece.edgesOf(EdgeRole.NECK)) {
                    turned += turn(neck);
                }
            }
        }
        return mm / (2 * turned);
    }

    private static double turn(Edge neck) {
        return Math.abs(neck.path().startTangent().angleTo(neck.path().endTangent()));
    }

    private static void parallel(StepList list, Piece piece, double outMm) {
        UpperPart part = new UpperPart(list, piece);
        Vec top = alongShoulder(part, outMm, outMm);
        double longer = outMm * turn(part.corners.edge(EdgeRole.NECK));
        draw(list, part, top, -outMm, longer);
    }

    private static void sides(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Vec top = alongShoulder(part, mm / 4, mm);
        draw(list, part, top, 0, mm / 4);
    }

    private static void draw(StepList list, UpperPart part, Vec top, double upMm, double longerMm) {
        NeckDrawing drawing = new NeckDrawing(list, part);
        list.add(new Step.Slide(top.x(), top.y()));
        drawing.traceTop(ENDS_SHARE);
        list.add(new Step.LayBack());
        drawing.traceCentre(upMm, ENDS_SHARE);
        drawing.betweenLonger(Motion.slide(top), upMm, ENDS_SHARE, longerMm);
    }

    /** The neck point goes out along the seam, which is ruled from there. */
    private static Vec alongShoulder(UpperPart part, double outMm, double mm) {
        Place neck = part.shoulderNeck();
        double ruled = Math.min(RULED_MM, part.plainFrom(neck) / 2);
        if (outMm > ruled - 5) {
            throw part.refusal(
                    "shoulder",
                    mm,
                    "the shoulder seam is too short to give so much to the neck; take less, or the next size.");
        }
        part.join(neck, 0, ruled, JoinForm.STRAIGHT);
        return part.leaving(neck).times(outMm);
    }
}
