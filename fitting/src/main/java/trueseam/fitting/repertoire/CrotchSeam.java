package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.CrotchLength;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Crotch depth; crotch length of the front and of the back; seat of trousers. */
final class CrotchSeam {

    /** How far above and below the cut the centre seam is drawn new, beyond what opens or laps, mm: a hand's blending. */
    private static final double BLEND_MM = 20;

    static final Entry DEPTH = Entry.named(
                    "crotch depth", Family.TROUSERS, Stage.LENGTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
            .solvedFor(Measure.BODY_RISE)
            .folds("the crotch hangs low, or cuts in all round when sitting")
            .amount("makes the crotch deeper", "makes the crotch shallower")
            .moves("everything below the line")
            .sharing("the full amount on front and back; the crotch seam changes by N in front and N at the back")
            .pin("line across the hip above the crotch")
            .stays(Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.HEM))
            .alsoStays("the shape of the crotch curve; the inseam. The outseam changes by N")
            .lengthens(EdgeRole.CROTCH)
            .trued("side and centre seam are joined over the line")
            .source("NM209 for the ease; common practice")
            .amounts(12.7, 31.75)
            .doneBy((pattern, mm) ->
                    new LengthAtLine("Crotch depth", LevelName.CROTCH_DEPTH, TrouserGirth.TROUSERS, mm).work(pattern));

    static final Entry FRONT = Entry.named(
                    "front crotch length", Family.TROUSERS, Stage.CROTCH, PieceKind.TROUSER_FRONT)
            .solvedFor(Measure.FRONT_CROTCH_LENGTH)
            .folds("lines point up from the crotch in front, or loose folds point down from it")
            .amount("lengthens the front crotch seam", "shortens the front crotch seam")
            .moves("the front crotch point, or the centre front waist")
            .sharing("the front's own share of the crotch length; left and right alike")
            .pin("knee on the inseam; for the waist: side waist")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.back(EdgeRole.CROTCH))
            .alsoStays("the back; the waist girth")
            .lengthens(EdgeRole.CROTCH)
            .trued("the crotch curve is drawn new into the moved end; the inseam is walked")
            .source("NM209 (front and back read apart); common practice")
            .amounts(12.7, 19.05)
            .variant(
                    "crotch point",
                    "when the leg strains or folds at the fork: the depth through the body is wrong",
                    (pattern, mm) -> new CrotchLength(mm, 0, 0, 0).work(pattern))
            .variant(
                    "waist",
                    "when the waist dips or rides up in front: the height is wrong",
                    (pattern, mm) -> new CrotchLength(0, mm, 0, 0).work(pattern))
            .written();

    static final Entry BACK = Entry.named("back crotch length", Family.TROUSERS, Stage.CROTCH, PieceKind.TROUSER_BACK)
            .solvedFor(Measure.BACK_CROTCH_LENGTH)
            .folds("the waist dips at the centre back on sitting", "lines point up from the crotch at the back")
            .amount("lengthens the back crotch seam", "shortens the back crotch seam")
            .moves("the back crotch point, or the back above the hip line, or the centre back waist")
            .sharing("the back's own share of the crotch length; left and right alike")
            .pin("knee on the inseam; for the wedge: hip at the side seam; for the waist: side waist")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.front(EdgeRole.CROTCH))
            .alsoStays("the front; the waist girth")
            .lengthens(EdgeRole.CROTCH)
            .trued("the centre seam is drawn new where it was opened or moved; the inseam is walked")
            .source("NM209 (front and back read apart); common practice")
            .amounts(12.7, 19.05)
            .variant(
                    "crotch point",
                    "when the leg strains or folds at the fork: the depth through the body is wrong",
                    (pattern, mm) -> new CrotchLength(0, 0, mm, 0).work(pattern))
            .variant("wedge", "when the waist dips on sitting: height over the seat is wrong", wedge())
            .variant(
                    "waist",
                    "for a small amount, where the hip line must not be opened",
                    (pattern, mm) -> new CrotchLength(0, 0, 0, mm).work(pattern))
            .written();

    static final Entry SEAT = Entry.named("trouser seat", Family.TROUSERS, Stage.CROTCH, PieceKind.TROUSER_BACK)
            .calledForBy(Measure.BACK_CROTCH_LENGTH, Measure.HIP_GIRTH)
            .folds(
                    "the back pulls down; lines curve up from the crotch to the hip",
                    "for a flat one: the trousers bag under the seat")
            .amount(
                    "opens the back at the hip line and moves the crotch point out, for a prominent seat",
                    "laps the back at the hip line and moves the crotch point in, for a flat seat")
            .moves("the back above the hip line; the back crotch point")
            .sharing(
                    "half of the amount in the wedge, half at the crotch point; as the crotch length, never halved for left and right")
            .pin("hip at the side seam; knee on the inseam")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.INSEAM),
                    Stay.front(EdgeRole.CROTCH))
            .alsoStays("the front")
            .lengthens(EdgeRole.CROTCH)
            .trued("the centre seam over the wedge; the crotch curve; the inseam is walked")
            .source("common practice; folds web:smile, web:pants")
            .amounts(25.4, 38.1)
            .doneBy(Maker.inTurn(
                    wedge().timesAmount(0.5), (pattern, mm) -> new CrotchLength(0, 0, mm / 2, 0).work(pattern)));

    private CrotchSeam() {}

    static Maker wedge() {
        return Maker.each(Set.of(PieceKind.TROUSER_BACK), CrotchSeam::openAtHip);
    }

    private static void openAtHip(StepList list, Piece piece, double mm) {
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        SeamLine centre = new SeamLine(piece, EdgeRole.CROTCH);
        Place hip = side.at(LevelName.HIP, "hip point");
        Place cut = centre.at(LevelName.HIP, "centre back at the hip line");
        Place waist = new Corners(piece).centreWaist();
        list.cut("back above the hip", cut, List.of(), hip, waist);
        list.add(new Step.Spread(Spot.of(piece, hip), new Until.MovesAlong(Spot.of(piece, waist), mm)));
        double reach = BLEND_MM + Math.abs(mm) / 2;
        double up = centre.top("").alongMm() > cut.alongMm() ? 1 : -1;
        Place above = new Place(cut.edge(), cut.alongMm() + up * reach, "above the cut");
        Place below = new Place(cut.edge(), cut.alongMm() - up * reach, "below the cut");
        list.trace(hip, side.top(""));
        list.trace(waist.edge(), 0, piece.edge(waist.edge()).length());
        list.trace(above, centre.top(""));
        list.join(above, below, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }
}
