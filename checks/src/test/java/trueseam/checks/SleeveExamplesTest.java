package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;
import trueseam.intake.size.SizeTables;

/** Sleeves against published and common examples. */
class SleeveExamplesTest {

    private static final double INCH_MM = 25.4;

    @Test
    void aCapThreeQuartersShorterThanItsArmholeGetsAnInchAndAHalfAndHasThreeQuartersToEase() {
        // A grading school's note on cap ease: the cap is 3/4 in shorter than the armhole; ease wanted 3/8 in front and
        // 3/8 in at
        // the back; add 1 1/2 in, the ease becomes 3/4 in (trade.md 6, example 5).
        Pattern shortCap = Shells.bodice(
                DraftFigure.of(SizeTables.named("misses"), "14"),
                DraftEase.fitted().withCap(-0.75 * INCH_MM));
        assertThat(capEase(shortCap)).isCloseTo(-0.75 * INCH_MM, within(0.01));
        WorkedPattern worked = altered(shortCap, "cap ease", 1.5 * INCH_MM);
        assertThat(capEase(worked.altered())).isCloseTo(0.75 * INCH_MM, within(0.01));
        // Shared over the two halves of the cap.
        for (String half : List.of("cap front", "cap back")) {
            assertThat(worked.altered().piece("sleeve").sewnLength(half)
                            - shortCap.piece("sleeve").sewnLength(half))
                    .isCloseTo(0.75 * INCH_MM, within(0.01));
        }
    }

    @Test
    void aSleeveLengthenedAboveTheElbowCarriesItsElbowDown() {
        // trade.md 6, example 32: half an inch, half above and half below the elbow; the part above alone moves the
        // elbow.
        for (Pattern bodice : List.of(bodice("8"), bodice("20"))) {
            WorkedPattern above = altered(bodice, "sleeve length above the elbow", INCH_MM / 4);
            WorkedPattern below = altered(bodice, "sleeve length below the elbow", INCH_MM / 4);
            assertThat(change(above, Measure.UPPER_ARM_LENGTH)).isCloseTo(INCH_MM / 4, within(0.01));
            assertThat(change(below, Measure.UPPER_ARM_LENGTH)).isCloseTo(0, within(0.01));
            assertThat(change(above, Measure.ARM_LENGTH)).isCloseTo(INCH_MM / 4, within(0.01));
            assertThat(change(below, Measure.ARM_LENGTH)).isCloseTo(INCH_MM / 4, within(0.01));
        }
    }

    @Test
    void anElbowDartTakesWhatTheBackSeamWasOpenedAndTheSeamsStillWalk() {
        // trade.md 4.3, no elbow fullness: the back seam is opened by d, 1/2 to 1 in (common practice); the front seam
        // stays.
        for (double inches : new double[] {0.5, 1}) {
            WorkedPattern worked = altered(bodice("14"), "elbow fullness", inches * INCH_MM);
            var sleeve = worked.altered().piece("sleeve");
            assertThat(sleeve.dartsOn("underarm back").get(0).mouthMm()).isCloseTo(inches * INCH_MM, within(0.3));
            assertThat(sleeve.sewnLength("underarm back")).isCloseTo(sleeve.sewnLength("underarm front"), within(0.1));
        }
    }

    @Test
    void aSleeveThreeQuartersTooNarrowGetsThreeEighthsAtEachEdge() {
        // trade.md 6, example 27: upper arm 13, ease 2, pattern 14 1/4: need 3/4, 3/8 each edge (common practice).
        WorkedPattern worked = altered(bodice("14"), "whole sleeve girth", 0.75 * INCH_MM);
        assertThat(change(worked, Measure.UPPER_ARM_GIRTH)).isCloseTo(0.75 * INCH_MM, within(0.1));
        double front = worked.altered()
                        .piece("sleeve")
                        .edge("cap front")
                        .path()
                        .start()
                        .x()
                - worked.original()
                        .piece("sleeve")
                        .edge("cap front")
                        .path()
                        .start()
                        .x();
        assertThat(front).isCloseTo(0.375 * INCH_MM, within(0.5));
    }

    private static Pattern bodice(String size) {
        return Shells.bodice(DraftFigure.of(SizeTables.named("misses"), size), DraftEase.fitted());
    }

    private static WorkedPattern altered(Pattern pattern, String name, double mm) {
        return WorkedPattern.altered(
                pattern, List.of(Applied.usual(Repertoire.named(name).orElseThrow(), mm)));
    }

    private static double change(WorkedPattern worked, Measure measure) {
        return FlatPattern.measure(worked.altered(), measure).orElseThrow().mm()
                - FlatPattern.measure(worked.original(), measure).orElseThrow().mm();
    }

    private static double capEase(Pattern pattern) {
        Seam armhole = pattern.seams().stream()
                .filter(seam -> seam.name().equals("armhole"))
                .findFirst()
                .orElseThrow();
        return pattern.sewnLength(armhole.second()) - pattern.sewnLength(armhole.first());
    }
}
