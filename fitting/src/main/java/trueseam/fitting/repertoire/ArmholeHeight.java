package trueseam.fitting.repertoire;

import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Armhole higher or lower: its base goes up or down along the side seam, front and back alike. */
final class ArmholeHeight {

    /** The armhole beside the underarm that is slid as it is drawn, mm. */
    private static final double BASE_MM = 15;

    /** How much of the side seam is ruled new beside the underarm, at the least, mm. */
    private static final double RULED_MM = 10;

    /** A side seam is at least so upright at the underarm. */
    private static final double LEAST_UPRIGHT = 0.5;

    static final Entry ENTRY = Entry.named(
                    "armhole height",
                    Family.BODICE,
                    Stage.SHOULDER,
                    PieceKind.BODICE_FRONT,
                    PieceKind.BODICE_BACK,
                    PieceKind.DRESS_FRONT,
                    PieceKind.DRESS_BACK)
            .calledForBy(Measure.ARMSCYE_GIRTH, Measure.SCYE_DEPTH)
            .folds("the armhole binds under the arm", "the armhole gapes under the arm and lifts the bodice with it")
            .amount("raises the base of the armhole", "lowers the base of the armhole")
            .moves("the underarm point along the side seam, and the armhole below its notch")
            .sharing("the full amount on front and back")
            .pin("no pin: a slide along the side seam")
            .stays(Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.NECK), Stay.all(EdgeRole.CENTRE))
            .alsoStays("the armhole above its notch")
            .lengthens(EdgeRole.ARMHOLE, EdgeRole.SIDE)
            .trued("the side seams are walked; the sleeve follows")
            .source("[HERR32] by name; common practice")
            .amounts(9.525, 19.05)
            .doneBy(Maker.each(UpperPart.ALL, ArmholeHeight::steps));

    private ArmholeHeight() {}

    private static void steps(StepList list, Piece piece, double mm) {
        UpperPart part = new UpperPart(list, piece);
        Place underarm = part.corners.underarm();
        Place base = part.armholeBase();
        Point at = underarm.on(piece);
        Vec down = part.leaving(underarm);
        // Front and back seams slant differently: half way between going equally high and going equally far along the
        // seam.
        double along = mm * (1 + 1 / Math.max(LEAST_UPRIGHT, -down.y())) / 2;
        double ruled = Math.max(0, -along) + RULED_MM;
        if (ruled > part.plainFrom(underarm)) {
            throw part.refusal(
                    "side", mm, "the dart at the side lies too high for so low an armhole; lower the dart first.");
        }
        Vec slid = mm > 0
                ? down.times(-along)
                : part.at(underarm, -along, "").on(piece).minus(at);
        list.add(new Step.Slide(slid.x(), slid.y()));
        part.trace(base, 0, BASE_MM);
        list.add(new Step.LayBack());
        part.join(underarm, 0, ruled, JoinForm.STRAIGHT);
        double notch = part.from(base, part.across());
        part.join(base, BASE_MM, notch, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }
}
