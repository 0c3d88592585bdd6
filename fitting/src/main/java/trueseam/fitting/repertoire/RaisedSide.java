package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.PieceWork;
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
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;

/** One hip higher, or one leg longer: the waist of that side rises at the side seam, to nothing at the centres. */
final class RaisedSide {

    static final Entry SKIRT = Entry.named("one hip higher", Family.SKIRT, Stage.LENGTH, Gore.SKIRTS)
            .calledForBy(Measure.WAIST_TO_HIP)
            .folds("the hem tilts; the skirt swings to one side; folds run from one hip to the other side of the waist")
            .amount("raises the waist at this side", "lowers the waist at this side")
            .moves("the waist of one side and its side seam above the hip")
            .sharing(
                    "the full amount at the side seam, front and back alike, to nothing at the centres; each gore by its place")
            .pin("waist at the centre")
            .stays(Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.HEM), Stay.all(EdgeRole.CENTRE))
            .alsoStays("the other side; the pieces can no longer be cut double")
            .trued(
                    "the side, and in gores the seams between them, are drawn anew from hip to waist, both edges of one length")
            .source("common practice")
            .amounts(12.7, 25.4)
            .doneBy(GoreTilt::raiseSide);

    static final Entry TROUSERS = Entry.named(
                    "one leg long", Family.TROUSERS, Stage.LENGTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
            .calledForBy(Measure.OUTSIDE_LEG_LENGTH, Measure.WAIST_TO_HIP)
            .folds("the hems are uneven though the legs of the pattern are alike", "the crease of one leg swings")
            .amount("lengthens this leg at the waist", "shortens this leg at the waist")
            .moves("the waist of one leg and its outseam above the hip")
            .sharing("the full amount at the side seam, front and back alike, to nothing at the centres")
            .pin("waist at the centre")
            .stays(
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.HEM),
                    Stay.all(EdgeRole.INSEAM),
                    Stay.all(EdgeRole.CROTCH))
            .alsoStays("the hem, the other leg; the pieces can no longer be cut double")
            .trued("the outseam is drawn anew from hip to waist, front and back of one length")
            .source("web:pantsbook (at the waist and not at the hem)")
            .amounts(9.525, 19.05)
            .doneBy(RaisedSide::raiseLeg);

    private RaisedSide() {}

    /** Front and back sides get one length: that of the one that needs most. */
    private static List<PieceWork> raiseLeg(Pattern pattern, double mm) {
        List<Piece> pieces =
                pattern.pieces().stream().filter(p -> p.kind().isTrouser()).toList();
        double sideMm = 0;
        for (Piece piece : pieces) {
            sideMm = Math.max(sideMm, gentleMm(piece, mm));
        }
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pieces) {
            StepList list = new StepList(piece);
            steps(list, piece, mm, sideMm);
            work.add(new PieceWork(piece.name(), list.finished()));
        }
        return work;
    }

    private static double gentleMm(Piece piece, double mm) {
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        Place hip = side.at(LevelName.HIP, "hip point");
        Place top = side.top("side waist");
        Spot centre = Spot.of(piece, new Corners(piece).centreWaist());
        Motion swing = Swing.along(piece, centre, Spot.of(piece, top), mm);
        return side.gentleMm(hip, top, swing);
    }

    private static void steps(StepList list, Piece piece, double mm, double sideMm) {
        Corners corners = new Corners(piece);
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        Place hip = side.at(LevelName.HIP, "hip point");
        Place top = side.top("side waist");
        Place centre = corners.centreWaist();
        list.add(new Step.Mark("side waist mark", top, 0, mm));
        list.add(new Step.Pin(centre));
        list.add(new Step.Pivot(new Until.MeetsAlong(top, "side waist mark")));
        list.trace(centre.edge(), 0, piece.edge(centre.edge()).length());
        list.join(hip, top, JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, sideMm));
    }
}
