package trueseam.fitting.repertoire;

import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.SleeveHalf;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;

/**
 * Elbow fullness: the sleeve is cut across at the elbow from the back seam to a hinge on the front seam, the back seam is opened, and
 * a dart takes what opened, so that the seam walks as before.
 */
final class ElbowDart {

    private static final String NAME = "elbow dart";

    /** The dart reaches half way to the middle of the sleeve and a little more (common practice: to the elbow point). */
    private static final double REACH_SHARE = 0.3;

    static final Entry ENTRY = Entry.named("elbow fullness", Family.SLEEVE, Stage.SLEEVE, PieceKind.SLEEVE)
            .folds(
                    "a tight long sleeve pulls at the elbow when the arm bends",
                    "a long sleeve twists round the forearm")
            .amount("opens the back seam at the elbow and makes a dart of it", "")
            .moves("the sleeve below the elbow, about the front seam")
            .sharing("the full amount at the back seam: the back seam less the front seam that the arm would need")
            .pin("hinge on the front seam at the elbow")
            .stays(Stay.all(EdgeRole.CAP), Stay.all(EdgeRole.WRIST), Stay.all(EdgeRole.UNDERARM))
            .alsoStays("the front seam; the sewn length of the back seam")
            .trued("the front seam is drawn smooth at the hinge; the dart is folded down")
            .source("common practice; [HERR32]")
            .amounts(12.7, 25.4)
            .doneBy(Maker.each(Set.of(PieceKind.SLEEVE), ElbowDart::steps));

    private ElbowDart() {}

    private static void steps(StepList list, Piece piece, double mm) {
        List<SleeveHalf> halves = SleeveHalf.of(piece);
        SleeveHalf back = halves.get(0).isBack() ? halves.get(0) : halves.get(1);
        SleeveHalf front = back.equals(halves.get(0)) ? halves.get(1) : halves.get(0);
        if (!piece.dartsOn(back.seam().name()).isEmpty()) {
            throw new AlterationException(
                    piece.name(), back.seam().name(), mm, "the seam has a dart already; widen that one.");
        }
        Place opening = at(back, mm, "elbow on the back seam");
        Place hinge = at(front, mm, "elbow on the front seam");
        Point from = opening.on(piece);
        Spot point = new Spot(from.towards(hinge.on(piece), REACH_SHARE), "elbow point");
        list.cut("lower sleeve", opening, List.of(), hinge, back.wristCorner());
        list.add(new Step.Spread(Spot.of(piece, hinge), new Until.MovesAlong(Spot.of(piece, opening), -mm)));
        traceToWrist(list, back, opening);
        traceToWrist(list, front, hinge);
        String wrist = piece.only(EdgeRole.WRIST).name();
        list.trace(wrist, 0, piece.edge(wrist).length());
        Stretch mouth = new Stretch(opening.edge(), opening.alongMm(), opening.alongMm());
        list.join(mouth.edge(), mouth.fromMm(), mouth.toMm(), JoinForm.STRAIGHT);
        list.add(new Step.NewDart(NAME, mouth, point));
    }

    private static Place at(SleeveHalf half, double mm, String word) {
        double along = half.seamAt(LevelName.ELBOW)
                .orElseThrow(() -> new AlterationException(
                        half.piece().name(),
                        half.seam().name(),
                        mm,
                        "the elbow level does not cross this seam; mark the elbow level on the piece."));
        return new Place(half.seam().name(), along, word);
    }

    private static void traceToWrist(StepList list, SleeveHalf half, Place from) {
        double end = half.wristCorner().alongMm();
        list.trace(from.edge(), Math.min(from.alongMm(), end), Math.max(from.alongMm(), end));
    }
}
