package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.PieceKind;

/** Length of a sleeve, above and below the elbow apart, so that an elbow dart stays at the elbow. */
final class SleeveLengths {

    static final Entry ABOVE = length("sleeve length above the elbow", LevelName.ABOVE_ELBOW, Measure.UPPER_ARM_LENGTH)
            .folds("the fullness for the elbow sits above or below the elbow")
            .moves("all below a line above the elbow")
            .pin("line half way between underarm and elbow")
            .written();

    static final Entry BELOW = length("sleeve length below the elbow", LevelName.BELOW_ELBOW, Measure.ARM_LENGTH)
            .folds("the sleeve ends above or below the wrist bone and the elbow is right")
            .moves("all below a line below the elbow")
            .pin("line half way between elbow and wrist")
            .written();

    private SleeveLengths() {}

    private static EntryBuilder length(String name, LevelName line, Measure measure) {
        return Entry.named(name, Family.SLEEVE, Stage.LENGTH, PieceKind.SLEEVE)
                .solvedFor(measure)
                .amount("lengthens the sleeve", "shortens the sleeve")
                .sharing("the full amount")
                .stays(Stay.all(EdgeRole.CAP), Stay.all(EdgeRole.WRIST))
                .alsoStays("upper arm and wrist")
                .trued("the two edges of the seam under the arm are drawn smooth over the line and stay of one length")
                .source("[ND1921]; common practice")
                .amounts(12.7, 38.1)
                .variant("at the line", "the only way here", (pattern, mm) -> new LengthAtLine(
                                "Sleeve length", line, Set.of(PieceKind.SLEEVE), mm)
                        .work(pattern));
    }
}
