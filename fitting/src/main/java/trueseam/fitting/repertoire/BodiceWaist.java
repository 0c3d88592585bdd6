package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/** The waist of a bodice or dress by its darts: all round, or in front alone for a large abdomen. */
final class BodiceWaist {

    /** A dart that takes up less than this is none, mm. */
    private static final double LEAST_MM = 2;

    static final Entry ALL_ROUND = Entry.named("waist by darts", Family.BODICE, Stage.WIDTH, UpperKinds.ALL)
            .calledForBy(Measure.WAIST_GIRTH)
            .folds("the waist is tight or loose and the side seams hang well")
            .amount("lets the waist darts out", "takes the waist darts in")
            .moves("the legs of every waist dart")
            .sharing("each of k darts in a half garment changes by N/(2k)")
            .pin("the point of the dart")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.NECK))
            .alsoStays("the side seams, the bust")
            .trued("the legs of each dart are of one length; the skirt's waist takes the same")
            .source("common practice")
            .amounts(12.7, 38.1)
            .doneBy(BodiceWaist::allRound);

    static final Entry ABDOMEN = Entry.named("large abdomen of a bodice", Family.BODICE, Stage.BUST, UpperKinds.FRONTS)
            .folds("the front waist rides up over the abdomen and is tight, the back waist is not")
            .amount("widens the front waist and lowers it at the centre", "narrows the front waist and raises it")
            .moves("the legs of the front waist dart; on a bodice the waist line, to nothing at the side seam")
            .sharing("N/2 on each half front in width, and as much in length at the centre")
            .pin("side waist")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.ARMHOLE), Stay.back(EdgeRole.WAIST))
            .alsoStays("the back, the side seam")
            .trued("the centre front is ruled straight; the front waist of the skirt takes the same")
            .source("[HERR32]; common practice")
            .amounts(12.7, 25.4)
            .doneBy(Maker.each(UpperKinds.FRONTS, BodiceWaist::abdomen));

    private BodiceWaist() {}

    private static List<PieceWork> allRound(Pattern pattern, double mm) {
        List<Piece> pieces = pattern.pieces().stream()
                .filter(piece -> UpperKinds.ALL.contains(piece.kind())
                        && !waistDarts(piece).isEmpty())
                .toList();
        int darts = pieces.stream()
                .mapToInt(piece -> waistDarts(piece).size() * piece.timesAround())
                .sum();
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pieces) {
            StepList list = new StepList(piece);
            waistDarts(piece).forEach(dart -> takeUp(list, piece, dart, -mm / darts));
            work.add(new PieceWork(piece.name(), list.finished()));
        }
        if (work.isEmpty()) {
            throw new AlterationException(
                    pattern.name(), "waist", mm, "no piece has a waist dart; alter the waist at the side seams.");
        }
        return work;
    }

    private static void abdomen(StepList list, Piece piece, double mm) {
        Corners corners = new Corners(piece);
        List<Dart> darts = waistDarts(piece);
        if (darts.isEmpty()) {
            throw new AlterationException(
                    piece.name(), "waist", mm, "the front has no waist dart to let out; widen it at the side seam.");
        }
        if (!piece.kind().isDress()) {
            Place centre = corners.centreWaist();
            list.add(new Step.Mark("centre front mark", centre, 0, -mm / 2));
            list.add(new Step.Pin(corners.sideWaist()));
            list.add(new Step.Pivot(new Until.MeetsAlong(centre, "centre front mark")));
            list.trace(centre.edge(), 0, piece.edge(centre.edge()).length());
        }
        darts.forEach(dart -> takeUp(list, piece, dart, -mm / 2 / darts.size()));
        if (!piece.kind().isDress()) {
            list.add(new Step.Straighten(corners.edge(EdgeRole.CENTRE).name()));
        }
    }

    /** Darts at the waist: sewn into its edge, or with two points across it. */
    private static List<Dart> waistDarts(Piece piece) {
        return piece.darts().stream()
                .filter(dart -> dart instanceof Dart.DiamondDart
                        || (dart instanceof Dart.EdgeDart d
                                && piece.edge(d.edge()).role() == EdgeRole.WAIST))
                .toList();
    }

    private static void takeUp(StepList list, Piece piece, Dart dart, double moreMm) {
        double is = dart instanceof Dart.EdgeDart d ? d.mouthMm() : ((Dart.DiamondDart) dart).intakeMm();
        if (is + moreMm < LEAST_MM) {
            throw new AlterationException(
                    piece.name(),
                    dart.name(),
                    -moreMm,
                    "the dart does not hold so much; let out what it holds and alter the rest at the side seams.");
        }
        list.add(new Step.Remark(Step.Inside.DART_LEGS, dart.name(), moreMm / 2, 0));
    }
}
