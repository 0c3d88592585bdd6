package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Layers;
import trueseam.drafting.Shells;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.size.SizeTables;
import trueseam.output.steps.StepWords;

/** A sway-back fold in a back without a waist seam (trade.md 4.3: restore the centre back; 11.8): what becomes of the hip. */
class SwayBackFoldTest {

    private static final Entry FOLD =
            Repertoire.named("sway-back without a waist seam").orElseThrow();
    private static final double MM = 6.35;

    @Test
    void hipKeepsItsGirthWhereTheSideGivesItBack() {
        for (String size : List.of("6", "14", "20")) {
            Pattern dress = dress(size);
            Pattern altered = worked(dress, "given back at the side", MM).altered();
            // Nothing at the level of the hip has moved but the paper inside.
            assertThat(hip(altered)).isCloseTo(hip(dress), within(0.1));
            assertThat(altered.piece("dress back").fold()).contains("centre back");
            assertThat(shorter(dress, altered)).isCloseTo(MM, within(0.15));
        }
    }

    @Test
    void hipKeepsItsGirthWhereTheCentreGetsASeamAndThePieceSaysThatItIsOffTheFold() {
        for (String size : List.of("6", "14", "20")) {
            Pattern dress = dress(size);
            WorkedPattern worked = worked(dress, "centre back seam", MM);
            // A level across what was turned by an angle is longer by one over its cosine: 2 degrees, 0.06 % of a
            // quarter hip of 300 mm.
            assertThat(hip(worked.altered())).isCloseTo(hip(dress), within(0.5));
            Piece back = worked.altered().piece("dress back");
            assertThat(back.fold()).isEmpty();
            assertThat(back.cutCount()).isEqualTo(2);
            assertThat(back.edge("centre back").allowanceMm())
                    .isEqualTo(back.edge("side").allowanceMm());
            assertThat(shorter(dress, worked.altered())).isCloseTo(MM, within(0.05));
            assertThat(words(worked)).anySatisfy(said -> assertThat(said)
                    .contains("centre back is no longer a fold but a seam", "write \"cut 2\" on the piece", "5/8 in"));
        }
    }

    @Test
    void hipBecomesSmallerOnTheFoldByWhatStoodOverIt() {
        Pattern dress = dress("14");
        // The part turns by the angle whose sine is mm over the width of the half back at the waist; at the hip that is
        // so far below,
        // it stands over the fold by the depth times the angle, on both halves.
        Piece back = dress.piece("dress back");
        double width = back.edge("side").path().atLevel(0).orElseThrow().point().x();
        double depth = -back.level(LevelName.HIP).orElseThrow();
        double lost = 2 * depth * Math.tan(Math.asin(MM / width));
        Pattern altered = worked(dress, "on the fold", MM).altered();
        assertThat(hip(dress) - hip(altered)).isCloseTo(lost, within(0.5));
        assertThat(lost).isGreaterThan(8);
    }

    @Test
    void frontLengthOfADressKeepsHipWaistAndSide() {
        Entry length = Repertoire.named("front length").orElseThrow();
        for (String size : List.of("6", "14", "20")) {
            Pattern dress = dress(size);
            for (double mm : new double[] {9.525, -9.525}) {
                Pattern altered = WorkedPattern.altered(dress, List.of(Applied.usual(length, mm)))
                        .altered();
                for (Measure measure : List.of(Measure.HIP_GIRTH, Measure.WAIST_GIRTH, Measure.BUST_GIRTH)) {
                    assertThat(FlatPattern.measure(altered, measure)
                                    .orElseThrow()
                                    .mm())
                            .isCloseTo(
                                    FlatPattern.measure(dress, measure)
                                            .orElseThrow()
                                            .mm(),
                                    within(0.1));
                }
                Piece front = altered.piece("dress front");
                assertThat(front.edge("side").path().length())
                        .isCloseTo(
                                dress.piece("dress front").edge("side").path().length(), within(0.1));
                // The centre takes the amount, less what squaring the hem there takes.
                assertThat(front.edge("centre front").length()
                                - dress.piece("dress front")
                                        .edge("centre front")
                                        .length())
                        .isCloseTo(mm, within(0.5));
            }
        }
    }

    @Test
    void liningOfABackThatLeavesTheFoldLeavesItToo() {
        Pattern lined = Layers.withLining(dress("14"));
        Pattern altered = worked(lined, "centre back seam", MM).altered();
        Piece lining = altered.piece("dress back lining");
        assertThat(lining.fold()).isEmpty();
        assertThat(lining.edges()).isEqualTo(altered.piece("dress back").edges());
    }

    private static List<String> words(WorkedPattern worked) {
        return worked.chapters().stream()
                .filter(chapter -> !chapter.truing())
                .flatMap(chapter -> StepWords.of(chapter.before(), chapter.steps(), LengthFormat.inches(8)).stream())
                .toList();
    }

    private static WorkedPattern worked(Pattern pattern, String way, double mm) {
        WorkedPattern worked = WorkedPattern.altered(
                pattern, List.of(new Applied(FOLD, FOLD.variant(way).orElseThrow(), mm, Optional.empty())));
        assertThat(Prover.prove(worked, Map.of(), false).failures()).isEmpty();
        return worked;
    }

    private static double shorter(Pattern before, Pattern after) {
        return before.piece("dress back").edge("centre back").length()
                - after.piece("dress back").edge("centre back").length();
    }

    private static double hip(Pattern pattern) {
        return FlatPattern.measure(pattern, Measure.HIP_GIRTH).orElseThrow().mm();
    }

    private static Pattern dress(String size) {
        return Shells.dress(DraftFigure.of(SizeTables.named("misses"), size), DraftEase.fitted());
    }
}
