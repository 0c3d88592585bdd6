package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.fitting.alteration.KimonoLength;
import trueseam.fitting.alteration.KimonoSleeveGirth;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.RaglanSleeveGirth;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.PieceKind;

/** Length and girth of sleeves that are not set in: of a kimono, cut in one with front and back, and of a raglan, whose seams run to the neck. */
final class SleevesToTheNeck {

    /** At both lines half, so that the elbow stays half way. */
    private static final Maker AT_BOTH_LINES = Maker.inTurn(
            raglanLine(LevelName.ABOVE_ELBOW).timesAmount(0.5),
            raglanLine(LevelName.BELOW_ELBOW).timesAmount(0.5));

    static final Entry RAGLAN = Entry.named("raglan length", Family.SLEEVE, Stage.LENGTH, PieceKind.RAGLAN_SLEEVE)
            .solvedFor(Measure.ARM_LENGTH)
            .folds("the raglan sleeve ends above or below the wrist bone")
            .amount("lengthens the raglan sleeve", "shortens the raglan sleeve")
            .moves("all below a line above the elbow and a line below it, measured along the centre line of the sleeve")
            .sharing("the full amount, half of it at either line")
            .pin("lines half way between underarm and elbow, and between elbow and wrist; the sleeve slides along them")
            .stays(Stay.all(EdgeRole.RAGLAN), Stay.all(EdgeRole.NECK), Stay.all(EdgeRole.WRIST))
            .alsoStays("the neck, the shoulder in the sleeve, upper arm and wrist")
            .trued("the two edges of the seam under the arm are drawn smooth over the lines and stay of one length")
            .source("[ND1921]; common practice")
            .amounts(12.7, 38.1)
            .variant("at both lines", "the elbow stays half way [ND1921]", AT_BOTH_LINES)
            .variant("below the elbow", "the upper arm is right (common practice)", raglanLine(LevelName.BELOW_ELBOW))
            .written();

    static final Entry KIMONO = Entry.named(
                    "kimono length", Family.SLEEVE, Stage.LENGTH, PieceKind.KIMONO_FRONT, PieceKind.KIMONO_BACK)
            .solvedFor(Measure.NAPE_TO_WRIST_LENGTH)
            .folds("the kimono sleeve ends above or below the wrist bone")
            .amount("lengthens the kimono sleeve", "shortens the kimono sleeve")
            .moves(
                    "the forearm, along the overarm line; it is measured from the centre back to the stitching line of the wrist, which a"
                            + " pattern of the time had 3/8 in inside its edge")
            .sharing("the full amount on front and back")
            .pin("line square to the sleeve, half way between elbow and wrist; all beyond it slides")
            .stays(
                    Stay.all(EdgeRole.NECK),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.WRIST))
            .alsoStays("the neck, the upper arm, the curve under it")
            .trued("the seams over and under the arm are drawn smooth over the line, front and back alike")
            .source("[ND1921]; common practice")
            .amounts(12.7, 38.1)
            .doneBy((pattern, mm) -> new KimonoLength(mm).work(pattern));

    static final Entry RAGLAN_GIRTH = girth("raglan sleeve girth", PieceKind.RAGLAN_SLEEVE)
            .pin("where either raglan seam meets the neck; then the underarm, back to the wrist")
            .stays(Stay.all(EdgeRole.RAGLAN))
            .alsoStays("front and back; the wrist from corner to corner")
            .doneBy((pattern, mm) -> new RaglanSleeveGirth(mm, 0).work(pattern));

    static final Entry KIMONO_GIRTH = girth("kimono sleeve girth", PieceKind.KIMONO_FRONT, PieceKind.KIMONO_BACK)
            .pin(
                    "the seam under the arm slides square to the overarm, then is pinned at the upper arm, back to the wrist")
            .stays(Stay.all(EdgeRole.OVERARM), Stay.all(EdgeRole.SIDE))
            .alsoStays("neck and shoulder, the wrist")
            .doneBy((pattern, mm) -> new KimonoSleeveGirth(mm, 0).work(pattern));

    private SleevesToTheNeck() {}

    private static Maker raglanLine(LevelName line) {
        return (pattern, mm) ->
                new LengthAtLine("Raglan length", line, Set.of(PieceKind.RAGLAN_SLEEVE), mm).work(pattern);
    }

    private static EntryBuilder girth(String name, PieceKind... on) {
        return Entry.named(name, Family.SLEEVE, Stage.SLEEVE, on)
                .solvedFor(Measure.UPPER_ARM_GIRTH)
                .folds("the sleeve pulls across the upper arm", "folds down the sleeve of a thin arm")
                .amount("widens the sleeve at the upper arm", "narrows the sleeve at the upper arm")
                .moves("the seam under the arm, front and back alike")
                .sharing("N/2 at each edge of the seam under the arm")
                .trued("the underarm is drawn smooth; the seams walk")
                .source("common practice")
                .amounts(19.05, 50.8);
    }
}
