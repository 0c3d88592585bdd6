package trueseam.output.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.output.DrawnByHand;
import trueseam.output.Fits;
import trueseam.output.PdfText;
import trueseam.output.sheet.SheetPaper;

class FittingChartTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);

    private static List<Map<String, String>> parsed(String csv) throws IOException {
        CsvSchema head = CsvSchema.emptySchema().withHeader();
        try (MappingIterator<Map<String, String>> rows =
                new CsvMapper().readerForMapOf(String.class).with(head).readValues(csv)) {
            return rows.readAll();
        }
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void theCsvReadBackGivesTheFigures(LengthUnit unit) throws IOException {
        FittingChart chart = Fits.chart(Fits.fit(LengthFormat.usual(unit)));
        List<Map<String, String>> rows = parsed(ChartCsv.text(chart));
        String in = " (" + unit.sign() + ")";
        assertThat(rows).hasSameSizeAs(chart.lines()).isNotEmpty();
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> row = rows.get(i);
            ChartLine line = chart.lines().get(i);
            Need need = line.need();
            assertThat(Measure.named(row.get("standard term"))).isEqualTo(need.measure());
            assertThat(Measure.named(row.get("measure"))).isEqualTo(need.measure());
            isLength(row.get("body" + in), OptionalDouble.of(need.body().mm()), unit);
            isLength(row.get("table" + in), need.tableMm(), unit);
            isLength(row.get("flat pattern" + in), need.flatMm(), unit);
            isLength(row.get("ease" + in), OptionalDouble.of(need.easeMm()), unit);
            isLength(row.get("least ease" + in), need.minimumEaseMm(), unit);
            isLength(row.get("need" + in), OptionalDouble.of(need.needMm()), unit);
            isLength(row.get("in all" + in), OptionalDouble.of(need.decision().amountMm()), unit);
            isLength(row.get("after" + in), line.afterMm(), unit);
            assertThat(row.get("reason")).isEqualTo(need.decision().reason());
            line.change().ifPresent(change -> {
                isLength(row.get("per edge" + in), OptionalDouble.of(change.perEdgeMm()), unit);
                assertThat(Integer.parseInt(row.get("edges"))).isEqualTo(change.edges());
            });
        }
    }

    private static void isLength(String cell, OptionalDouble mm, LengthUnit unit) {
        if (mm.isEmpty()) {
            assertThat(cell).isEmpty();
        } else {
            // Four decimals of the unit, so half of the last one (and the rounding of this sum).
            assertThat(Double.parseDouble(cell) * unit.mm()).isCloseTo(mm.getAsDouble(), within(0.501e-4 * unit.mm()));
        }
    }

    @Test
    void whatIsMeasuredAfterIsTheFlatPatternBeforeAndTheAmount() {
        FittingChart chart = Fits.chart(Fits.fit(INCHES));
        for (ChartLine line : chart.lines()) {
            if (line.need().decision().isAltered()) {
                assertThat(line.afterMm().orElseThrow())
                        .as(line.label())
                        .isCloseTo(
                                line.need().flatMm().orElseThrow()
                                        + line.need().decision().amountMm(),
                                within(0.1));
            }
        }
        // 38 in against the table's 36 in: 2 in, 1/2 in at each of four edges (common practice).
        ChartLine bust = chart.lines().get(0);
        assertThat(bust.need().measure()).isEqualTo(Measure.BUST_GIRTH);
        assertThat(bust.change().orElseThrow().perEdgeMm()).isCloseTo(12.7, within(1e-9));
    }

    @Test
    void thePdfShowsEveryLineWithReasonFootnotesSizeSleeveAndProofs() {
        FittingChart chart = Fits.chart(Fits.fit(INCHES));
        String text = PdfText.of(ChartSheet.pdf(chart, SheetPaper.A4));
        for (ChartLine line : chart.lines()) {
            assertThat(text).contains(line.label(), line.need().decision().reason());
        }
        assertThat(text)
                .contains(
                        "[1] Elbow: estimated, from the upper arm girth.", "[2] Wrist: stand-in, taken below the bone.")
                .contains(chart.size().orElseThrow().reason())
                .contains("Keep the cap seam", "Keep the cap height", "taken in this fit", "the other way, not taken")
                .contains("Waist girth: 5/8 in at each edge is more than 1/2 in")
                .contains("All " + chart.fit().report().proofs().size() + " proofs hold")
                .contains("trued to one level")
                .contains("tape \u00b1");
    }

    @Test
    void aFailedProofStandsAtTheTopWithWhereAndByHowMuch() {
        FittingChart chart = FittingChart.of(Fits.failing(Fits.fit(INCHES)), Optional.empty(), List.of());
        String text = PdfText.of(ChartSheet.pdf(chart, SheetPaper.LETTER));
        assertThat(text.indexOf("FAILED: 1 of ")).isNotNegative().isLessThan(text.indexOf("Measure "));
        assertThat(text).contains("Side seam: seams still walk is off by 2.500 mm (0.1000 allowed)");
    }

    @Test
    void onPaperTheChartSaysWhatItIsToBeAndNotWhatSchematicPiecesMeasure() {
        FitResult fit = Fits.onPaper(INCHES);
        FittingChart chart = FittingChart.of(fit, Optional.empty(), List.of());
        assertThat(chart.lines()).isNotEmpty().allSatisfy(line -> assertThat(line.afterMm())
                .isEmpty());
        assertThat(PdfText.of(ChartSheet.pdf(chart, SheetPaper.A4))).contains("Paper pattern, not in the computer");
    }

    @Test
    void theCostOfASleeveIsMeasuredOnTheSleeve() {
        SleeveFigures drawn = SleeveFigures.of(DrawnByHand.bodiceWithSleeve()).orElseThrow();
        // Drawn with its underarm points 130 mm below the crown, and straight seams from (160, -130) to (110, -560).
        assertThat(drawn.capHeightMm()).isCloseTo(130, within(1e-9));
        assertThat(drawn.underarmSeamMm()).isCloseTo(Math.hypot(50, 430), within(1e-9));
        List<SleeveCost> costs = Fits.chart(Fits.fit(INCHES)).sleeve();
        assertThat(costs)
                .extracting(SleeveCost::cap)
                .containsExactly(CapChoice.KEEP_CAP_SEAM, CapChoice.KEEP_CAP_HEIGHT);
        SleeveCost seam = costs.get(0);
        SleeveCost height = costs.get(1);
        assertThat(seam.after().capSeamMm()).isCloseTo(seam.before().capSeamMm(), within(2.0));
        assertThat(seam.after().capHeightMm()).isLessThan(seam.before().capHeightMm() - 5);
        assertThat(height.after().capHeightMm()).isCloseTo(height.before().capHeightMm(), within(0.1));
        assertThat(height.after().capSeamMm()).isGreaterThan(height.before().capSeamMm() + 5);
    }

    /** A body whose right arm is half an inch thicker: both sides are on the chart, and the mean is compared. */
    @Test
    void whereTheBodyHasLeftAndRightBothAreShown() throws IOException {
        Body body = Fits.person()
                .with(Reading.taped(Measure.ARM_LENGTH, Side.LEFT, 23 * 25.4))
                .with(Reading.taped(Measure.ARM_LENGTH, Side.RIGHT, 23.5 * 25.4));
        FitResult fit = Fits.of(body, INCHES);
        FittingChart chart = FittingChart.of(fit, Optional.empty(), List.of());
        assertThat(chart.lines().stream().filter(line -> line.sides().isPresent()))
                .singleElement()
                .satisfies(line -> assertThat(line.need().measure()).isEqualTo(Measure.ARM_LENGTH));
        assertThat(PdfText.of(ChartSheet.pdf(chart, SheetPaper.A4))).contains("left 23 in, right 23 1/2 in");
        Map<String, String> row = parsed(ChartCsv.text(chart)).stream()
                .filter(r -> Measure.named(r.get("standard term")) == Measure.ARM_LENGTH)
                .findFirst()
                .orElseThrow();
        assertThat(row).containsEntry("left (in)", "23").containsEntry("right (in)", "23.5");
    }

    /** Without ease stated by a pattern the ease is that of the table of wearing ease, which marks its publications. */
    @Test
    void anEaseOfThePublishedTableNamesItsPublication() {
        FitResult fit = Fits.fit(INCHES);
        Need arm = fit.needs().stream()
                .filter(n -> n.measure() == Measure.UPPER_ARM_GIRTH)
                .findFirst()
                .orElseThrow();
        Need marked = new Need(
                arm.measure(),
                arm.body(),
                arm.tableMm(),
                arm.flatMm(),
                arm.easeMm(),
                arm.minimumEaseMm(),
                "THR-SLV 2 at least",
                arm.method(),
                arm.needMm(),
                arm.decision());
        ChartLine line = new ChartLine(marked, Optional.empty(), Optional.empty(), OptionalDouble.empty());
        FittingChart chart = new FittingChart(fit, Optional.empty(), List.of(line), List.of());
        assertThat(PdfText.of(ChartSheet.pdf(chart, SheetPaper.A4)))
                .contains("published [1]")
                .contains(
                        "[1] Upper arm: the ease is from Set-in Sleeve Solutions, in Threads magazine: 2 in at least.")
                .doesNotContain("THR");
    }
}
