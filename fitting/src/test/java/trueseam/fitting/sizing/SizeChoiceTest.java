package trueseam.fitting.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;

/** The rules for choosing a size (trade facts, 1.1), against the misses' chart (1.2). */
class SizeChoiceTest {

    private static final double IN = 25.4;
    private static final SizeTable MISSES = SizeTables.named("misses");

    private static Body body(Object... measuresAndInches) {
        Body body = Body.named("Rosalind");
        for (int i = 0; i < measuresAndInches.length; i += 2) {
            double inches = ((Number) measuresAndInches[i + 1]).doubleValue();
            body = body.with(Reading.taped((Measure) measuresAndInches[i], inches * IN));
        }
        return body;
    }

    private static SizeChoice choose(SizeTable table, GarmentKind kind, Body body) {
        return SizeChoice.of(table, body, kind, LengthFormat.inches(8));
    }

    @ParameterizedTest
    @CsvSource({
        // Example 2, P: Principles of Pattern Alteration, Texas Cooperative Extension E-372, 2006: high bust and full
        // bust
        // differ by 2 in or more, take the high-bust size. Example 3, R: high bust 36, full bust 39: size 14.
        "36, 39, 14, upper chest girth",
        "36, 38, 14, upper chest girth",
        "36, 40, 14, upper chest girth",
        "34, 41, 12, upper chest girth",
        "36, 37.875, 16, bust girth",
        "36, 37, 14, bust girth",
        "36, 36, 14, bust girth"
    })
    void theUpperChestDecidesWhenTheFullBustIsTwoInchesOrMoreLarger(
            double upperIn, double bustIn, String size, String by) {
        SizeChoice choice = choose(
                MISSES, GarmentKind.BODICE, body(Measure.UPPER_CHEST_GIRTH, upperIn, Measure.BUST_GIRTH, bustIn));
        assertThat(choice.row().size()).isEqualTo(size);
        assertThat(choice.by().term()).isEqualTo(by);
    }

    @Test
    void theUpperChestIsReadAgainstTheBustColumn() {
        // Rule 3, a page on taking measures; common practice.
        SizeChoice choice =
                choose(MISSES, GarmentKind.DRESS, body(Measure.UPPER_CHEST_GIRTH, 36, Measure.BUST_GIRTH, 39));
        assertThat(choice.column()).isEqualTo(Measure.BUST_GIRTH);
        assertThat(choice.tableMm()).isEqualTo(36 * IN);
        assertThat(choice.reason()).contains("upper chest").contains("the bust is altered afterwards");
    }

    @ParameterizedTest
    @CsvSource({"SKIRT", "TROUSERS"})
    void skirtsAndTrousersGoByTheHipWhateverTheWaist(GarmentKind kind) {
        // Rules 4 and 5: The Use and Alteration of Commercial Patterns, State College of Washington Extension 78, 1922.
        SizeChoice choice = choose(
                MISSES,
                kind,
                body(
                        Measure.HIP_GIRTH,
                        40,
                        Measure.WAIST_GIRTH,
                        34,
                        Measure.BUST_GIRTH,
                        36,
                        Measure.ACROSS_FRONT_WIDTH,
                        12));
        assertThat(choice.row().size()).isEqualTo("16");
        assertThat(choice.by()).isEqualTo(Measure.HIP_GIRTH);
    }

    @Test
    void theFrameDecidesWhereTheTableHasIt() {
        // Rule 13, common practice: across front width moves little with weight.
        SizeTable framed = new SizeTable(
                "framed",
                "ours, for a test",
                List.of(Measure.BUST_GIRTH, Measure.ACROSS_FRONT_WIDTH),
                List.of(
                        new SizeRow("S", Map.of(Measure.BUST_GIRTH, 860.0, Measure.ACROSS_FRONT_WIDTH, 320.0)),
                        new SizeRow("M", Map.of(Measure.BUST_GIRTH, 910.0, Measure.ACROSS_FRONT_WIDTH, 332.0)),
                        new SizeRow("L", Map.of(Measure.BUST_GIRTH, 960.0, Measure.ACROSS_FRONT_WIDTH, 344.0))));
        Body large = Body.named("large bust, small frame")
                .with(Reading.taped(Measure.BUST_GIRTH, 960))
                .with(Reading.taped(Measure.UPPER_CHEST_GIRTH, 950))
                .with(Reading.taped(Measure.ACROSS_FRONT_WIDTH, 321));
        SizeChoice choice = choose(framed, GarmentKind.BODICE, large);
        assertThat(choice.row().size()).isEqualTo("S");
        assertThat(choice.by()).isEqualTo(Measure.ACROSS_FRONT_WIDTH);
    }

    @Test
    void ofTwoEquallyNearSizesTheSmallerIsTaken() {
        // Rules 6 and 7 disagree (by bone; always the larger, 1922); ours: the smaller one.
        assertThat(choose(MISSES, GarmentKind.SKIRT, body(Measure.HIP_GIRTH, 39))
                        .row()
                        .size())
                .isEqualTo("14");
    }

    @Test
    void everySizeOfTheChartChoosesItself() {
        for (SizeRow row : MISSES.rows()) {
            for (GarmentKind kind : GarmentKind.values()) {
                SizeChoice choice = choose(MISSES, kind, row.asBody());
                assertThat(choice.row().size()).isEqualTo(row.size());
                assertThat(choice.findings()).isEmpty();
            }
        }
    }

    @Test
    void aBodyOutsideTheTableGetsTheEndSizeAndIsTold() {
        SizeChoice choice = choose(MISSES, GarmentKind.SKIRT, body(Measure.HIP_GIRTH, 60));
        assertThat(choice.row().size()).isEqualTo("20");
        assertThat(choice.findings()).hasSize(1);
        assertThat(choice.findings().get(0).sentence()).contains("outside").contains("the end size was taken");
    }

    @Test
    void aBodyWithoutTheDecidingMeasureIsAskedForIt() {
        assertThatThrownBy(() -> choose(MISSES, GarmentKind.SKIRT, body(Measure.WAIST_GIRTH, 30)))
                .isInstanceOf(NoSizeException.class)
                .hasMessageContaining("hip girth")
                .hasMessageContaining("Rosalind");
    }
}
