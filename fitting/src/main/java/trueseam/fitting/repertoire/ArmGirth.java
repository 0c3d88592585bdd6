package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.alteration.SleeveGirth;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** Girth of a sleeve at the upper arm, running out to nothing at the wrist or down the whole sleeve. */
final class ArmGirth {

    private static final String KEEP_SEAM =
            "the sleeve still fits its armhole as it did; the cap gets lower or higher (common practice)";
    private static final String KEEP_HEIGHT =
            "the cap keeps its height and there is more or less to ease in (common practice)";

    static final Entry UPPER_ARM = girth("upper arm girth", SleeveReach.UPPER_ARM)
            .folds(
                    "the sleeve pulls across the upper arm and the wrist is right",
                    "folds down the sleeve of a thin arm")
            .alsoStays("the wrist; the two seams under the arm stay of one length")
            .pin("crown for each half of the cap, then the wrist corners")
            .variant(
                    "cross slash",
                    "the sleeve is opened inside and keeps its length at the fold: the crown is raised by the lap and there is more to ease in (common practice)",
                    Maker.each(Set.of(PieceKind.SLEEVE), CrossSlash::steps),
                    EdgeRole.CAP)
            .written();

    static final Entry WHOLE_SLEEVE = girth("whole sleeve girth", SleeveReach.WHOLE)
            .folds("the sleeve pulls from the armhole to the wrist")
            .alsoStays("the two seams under the arm stay of one length")
            .pin("crown for each half of the cap; the seams slide out")
            .written();

    private ArmGirth() {}

    private static EntryBuilder girth(String name, SleeveReach reach) {
        return Entry.named(name, Family.SLEEVE, Stage.SLEEVE, PieceKind.SLEEVE)
                .solvedFor(Measure.UPPER_ARM_GIRTH)
                .amount("widens the sleeve at the upper arm", "narrows the sleeve at the upper arm")
                .moves("both underarm points")
                .sharing("N/2 at each edge of the seam under the arm")
                .trued("the crown and the underarm are drawn smooth; the seams walk; the cap is walked in the armhole")
                .source("common practice; [HERR32]")
                .amounts(19.05, 50.8)
                .variant("keep the cap seam", KEEP_SEAM, (pattern, mm) -> new SleeveGirth(
                                mm, CapChoice.KEEP_CAP_SEAM, reach)
                        .work(pattern))
                .variant(
                        "keep the cap height",
                        KEEP_HEIGHT,
                        (pattern, mm) -> new SleeveGirth(mm, CapChoice.KEEP_CAP_HEIGHT, reach).work(pattern),
                        EdgeRole.CAP);
    }
}
