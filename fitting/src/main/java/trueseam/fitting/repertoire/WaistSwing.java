package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/**
 * A front or back without a waist seam, cut across at the waist: what hangs below swings about the side waist, and the centre becomes
 * shorter (a fold is pinched out) or longer (the cut opens).
 *
 * <pre>{@code
 *   waist  c______s     Swung up, the centre below stands over the fold, the more the lower; swung down, it falls
 *          |      |     short of it. Ruled straight, the fold takes that from the hip or gives it. Beside the side
 *         /      /      seam, a wedge gives it back or a lap takes it: then the hip keeps its girth.
 *        /______/
 * }</pre>
 */
final class WaistSwing {

    /** How much of the centre is ruled new beside a fold, mm. */
    private static final double BESIDE_MM = 5;

    /** How much of the centre is drawn new on either side of a fold where it becomes a seam, mm. */
    private static final double SEAM_BESIDE_MM = 15;

    /** How much of the hem beside a lap is drawn new, mm. */
    private static final double HEM_BESIDE_MM = 20;

    private final StepList list;
    private final Piece piece;
    private final UpperPart part;
    private final double upMm;
    private final Place side;
    private final Place hem;
    private final Place hemOfSide;
    private final Place top;
    private final Place waist;
    private final double down;
    private final Motion swung;

    /**
     * @param upMm how far the centre below the waist goes up: the fold that is pinched out; minus for an opening
     */
    WaistSwing(StepList list, Piece piece, double upMm) {
        this.list = list;
        this.piece = piece;
        this.part = new UpperPart(list, piece);
        this.upMm = upMm;
        this.side = part.corners.onLevel(EdgeRole.SIDE, LevelName.WAIST, "side waist");
        this.hem = part.corners.at(EdgeRole.SIDE, EdgeRole.HEM, "side hem");
        this.hemOfSide = part.corners.at(EdgeRole.HEM, EdgeRole.SIDE, "side hem");
        this.top = part.centreTop();
        this.waist = BackOpening.centreAt(part, side.on(piece).y(), part.corners.centreWord() + " at the waist");
        this.down = part.from(top, waist);
        this.swung = part.turnedUp(side, waist, upMm);
    }

    /** The centre is ruled on the fold, and the side seam stays where it is: the hip keeps its girth. */
    void givenBackAtTheSide() {
        Place middle = part.at(hemOfSide, part.length(hemOfSide) / 2, "hem");
        list.cut(word(), waist, List.of(Spot.of(piece, side)), hemOfSide, middle);
        swing();
        Point corner = hemOfSide.on(piece);
        double lap = upMm > 0 ? 0 : swung.apply(corner).distanceTo(corner) + HEM_BESIDE_MM;
        if (2 * lap > part.length(hemOfSide)) {
            throw part.refusal(
                    "hem", upMm, "so much would lap more than the hem has; take half of it, or the next size.");
        }
        part.trace(hemOfSide, lap, part.length(hemOfSide));
        part.join(hemOfSide, 0, lap, JoinForm.STRAIGHT);
        rule();
    }

    /** The centre is ruled on the fold, and the hip gives or takes what stood over it. */
    void onTheFold() {
        cutToTheSide();
        rule();
    }

    /** The centre becomes a seam, drawn smooth over the fold. */
    void withASeam() {
        cutToTheSide();
        double from = down + upMm + SEAM_BESIDE_MM;
        part.trace(top, from, part.length(top));
        part.join(top, down - SEAM_BESIDE_MM, from, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        if (piece.fold().filter(top.edge()::equals).isPresent()) {
            list.add(new Step.Unfold(top.edge(), piece.edge(side.edge()).allowanceMm()));
        }
    }

    private String word() {
        return piece.kind().isBack() ? "lower back" : "lower front";
    }

    private void cutToTheSide() {
        list.cut(word(), waist, List.of(), side, hem);
        swing();
        part.traceWhole(hemOfSide);
        part.trace(hem, 0, part.from(hem, side));
    }

    /** The part swings; the levels below are marked where the side has them. */
    private void swing() {
        list.add(new Step.Spread(Spot.of(piece, side), new Until.MovesAlong(Spot.of(piece, waist), upMm)));
        for (LevelName level : List.of(LevelName.HIP, LevelName.SKIRT_LENGTH)) {
            piece.level(level).ifPresent(y -> {
                double up = swung.apply(new Point(0, y)).y() - y;
                list.add(new Step.Remark(Step.Inside.LEVEL, level.word(), 0, -up));
            });
        }
    }

    private void rule() {
        double from = upMm > 0 ? down + upMm + BESIDE_MM : down;
        part.trace(top, from, part.length(top));
        part.join(top, down, from, JoinForm.STRAIGHT);
        list.add(new Step.Straighten(top.edge()));
    }
}
