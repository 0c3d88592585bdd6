package trueseam.fitting.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Drafted;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Need;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/** Fitting a paper pattern that is not in the computer. */
class PaperOnlyTest {

    private static final double IN = 25.4;
    private static final Pattern SCHEMATIC = Drafted.shell(GarmentKind.SKIRT, "20");

    private static Body body() {
        return Body.named("Rosalind")
                .with(Reading.taped(Measure.HIP_GIRTH, 42 * IN))
                .with(Reading.taped(Measure.WAIST_GIRTH, 30 * IN));
    }

    private static Need of(FitResult fit, Measure measure) {
        return fit.needs().stream()
                .filter(n -> n.measure() == measure)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theChartAndTheAmountsComeFromWhatTheTapeReadOnThePaper() {
        // Worked examples 25 and 26, common practice: hip 42 + 2 1/2 - 41 = 3 1/2, 7/8 an edge; waist 30 + 1 - 29 = 2,
        // 1/2 an
        // edge. The schematic pieces are of a size that has nothing to do with the paper.
        FitResult fit = Fitting.onPaper(
                SCHEMATIC,
                body(),
                Optional.empty(),
                Map.of(Measure.HIP_GIRTH, 41 * IN, Measure.WAIST_GIRTH, 29 * IN),
                Drafted.USUAL);
        assertThat(fit.schematic()).isTrue();
        assertThat(of(fit, Measure.HIP_GIRTH).needMm()).isCloseTo(3.5 * IN, within(1e-9));
        assertThat(of(fit, Measure.WAIST_GIRTH).needMm()).isCloseTo(2 * IN, within(1e-9));
        assertThat(fit.changes()).extracting(Change::measure).containsExactly(Measure.WAIST_GIRTH, Measure.HIP_GIRTH);
        assertThat(fit.changes().get(0).perEdgeMm()).isCloseTo(0.5 * IN, within(1e-9));
        assertThat(fit.changes().get(1).perEdgeMm()).isCloseTo(0.875 * IN, within(1e-9));
        assertThat(fit.findings()).anyMatch(f -> f.sentence().contains("next size line"));
    }

    @Test
    void theStepsAreShownOnTheSchematicPiecesByTheSameAmounts() {
        FitResult fit =
                Fitting.onPaper(SCHEMATIC, body(), Optional.empty(), Map.of(Measure.HIP_GIRTH, 41 * IN), Drafted.USUAL);
        assertThat(fit.worked().chapters()).isNotEmpty();
        assertThat(Drafted.gained(fit, Measure.HIP_GIRTH)).isCloseTo(3.5 * IN, within(0.1));
        assertThat(fit.report().failures()).isEmpty();
    }

    @Test
    void withTheSizeAloneTheBodyIsComparedWithTheTable() {
        FitResult fit = Fitting.onPaper(
                SCHEMATIC, body(), Optional.of(SizeTables.named("misses").row("16")), Map.of(), Drafted.USUAL);
        Need hip = of(fit, Measure.HIP_GIRTH);
        assertThat(hip.method()).isEqualTo(Method.TABLE);
        assertThat(hip.flatMm()).as("nothing was taped on the paper").isEmpty();
        assertThat(hip.needMm()).isCloseTo(2 * IN, within(1e-9));
        assertThat(of(fit, Measure.WAIST_GIRTH).needMm()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aMeasureThatNobodyTapedOnThePaperIsNotInTheChart() {
        FitResult fit =
                Fitting.onPaper(SCHEMATIC, body(), Optional.empty(), Map.of(Measure.HIP_GIRTH, 41 * IN), Drafted.USUAL);
        assertThat(fit.needs()).extracting(Need::measure).containsExactly(Measure.HIP_GIRTH);
    }

    @Test
    void aTypedMeasureIsNotQuestionedByTheSchematicPieces() {
        // The paper needs nothing; that the schematic pieces are far too large must not show.
        FitResult fit = Fitting.onPaper(
                SCHEMATIC,
                body(),
                Optional.empty(),
                Map.of(Measure.HIP_GIRTH, 44.5 * IN, Measure.WAIST_GIRTH, 31 * IN),
                Drafted.USUAL);
        assertThat(fit.changes()).isEmpty();
        assertThat(fit.worked().altered()).isEqualTo(SCHEMATIC);
    }
}
