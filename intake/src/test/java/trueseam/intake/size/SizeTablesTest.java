package trueseam.intake.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.body.Origin;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeTable;

/**
 * The built-in tables against the US pattern companies' chart as reproduced by two web pages (2011), and its known rules:
 * grade steps, bust-hip difference and bust-waist drop.
 */
class SizeTablesTest {

    @Test
    void everyTableHasASourceAndAFigureType() {
        assertThat(SizeTables.builtIn())
                .extracting(SizeTable::name)
                .containsExactly("misses", "women", "miss petite", "misses astm (size 10 only)", "men (from survey)");
        assertThat(SizeTables.builtIn()).allSatisfy(table -> {
            assertThat(table.source()).hasSizeGreaterThan(30);
            assertThat(table.figure().type()).isNotBlank();
        });
    }

    @ParameterizedTest
    @CsvSource({
        // The chart's own rows; size 16 with bust 38 is confirmed by the second page.
        "misses, 6, 30.5, 23, 32.5, 15.5",
        "misses, 12, 34, 26.5, 36, 16.25",
        "misses, 16, 38, 30, 40, 16.75",
        "misses, 20, 42, 34, 44, 17.25",
        "women, 38, 42, 35, 44, 17.25",
        "women, 50, 54, 49, 56, 18",
        "miss petite, 6MP, 30.5, 23.5, 32.5, 14.5",
        "miss petite, 16mp, 38, 30.5, 40, 15.75"
    })
    void theChartsRowsAreInInches(
            String table, String size, double bustIn, double waistIn, double hipIn, double backWaistIn) {
        SizeTable found = SizeTables.named(table);
        assertThat(found.mm(size, Measure.BUST_GIRTH)).isCloseTo(bustIn * 25.4, within(1e-9));
        assertThat(found.mm(size, Measure.WAIST_GIRTH)).isCloseTo(waistIn * 25.4, within(1e-9));
        assertThat(found.mm(size, Measure.HIP_GIRTH)).isCloseTo(hipIn * 25.4, within(1e-9));
        assertThat(found.mm(size, Measure.BACK_WAIST_LENGTH)).isCloseTo(backWaistIn * 25.4, within(1e-9));
    }

    @Test
    void theMissesTableGradesAsTheTradeSaysItDoes() {
        SizeTable misses = SizeTables.named("misses");
        // Bust grades 1, 1, 1 1/2, 2, 2, 2, 2 in; back waist 1/4 in a size; hip is bust + 2 in throughout.
        assertThat(misses.gradeSteps(Measure.BUST_GIRTH))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
                .containsExactly(25.4, 25.4, 38.1, 50.8, 50.8, 50.8, 50.8);
        assertThat(misses.gradeSteps(Measure.BACK_WAIST_LENGTH))
                .allSatisfy(step -> assertThat(step).isCloseTo(6.35, within(1e-9)));
        misses.rows().forEach(row -> {
            double bust = row.mm().get(Measure.BUST_GIRTH);
            assertThat(row.mm().get(Measure.HIP_GIRTH) - bust).isCloseTo(50.8, within(1e-9));
            // Bust-waist drop: 7 1/2 in to size 12, 8 in from size 14.
            double dropIn = Integer.parseInt(row.size()) <= 12 ? 7.5 : 8;
            assertThat(bust - row.mm().get(Measure.WAIST_GIRTH)).isCloseTo(dropIn * 25.4, within(1e-9));
        });
    }

    @Test
    void missPetiteIsMissesWithHalfAnInchMoreWaistAndAnInchLessBack() {
        SizeTable misses = SizeTables.named("misses");
        SizeTable petite = SizeTables.named("Miss Petite");
        for (String size : List.of("6", "8", "10", "12", "14", "16")) {
            assertThat(petite.mm(size + "MP", Measure.WAIST_GIRTH) - misses.mm(size, Measure.WAIST_GIRTH))
                    .isCloseTo(12.7, within(1e-9));
            assertThat(petite.mm(size + "MP", Measure.BACK_WAIST_LENGTH) - misses.mm(size, Measure.BACK_WAIST_LENGTH))
                    .isCloseTo(-25.4, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"misses, 65, 66", "women, 65, 66", "miss petite, 62, 64"})
    void statureIsTheMiddleOfTheStatedHeightAndSaysSo(String name, double fromIn, double toIn) {
        SizeTable table = SizeTables.named(name);
        var stature =
                table.body(table.rows().get(0).size()).value(Measure.STATURE).orElseThrow();
        assertThat(stature.mm()).isCloseTo((fromIn + toIn) / 2 * 25.4, within(1e-9));
        assertThat(stature.origin()).isEqualTo(Origin.TABLE);
        assertThat(stature.note()).contains("computed").contains("stated height");
    }

    @Test
    void theOneStandardSizeIsAsItsAbstractShowsIt() {
        // ASTM D5585-11e1, Table 1, size 10, from the publisher's abstract.
        SizeTable astm = SizeTables.named("misses astm");
        assertThat(astm.mm("10 curvy", Measure.BUST_GIRTH)).isCloseTo(37.25 * 25.4, within(1e-9));
        assertThat(astm.mm("10 curvy", Measure.WAIST_GIRTH)).isCloseTo(29 * 25.4, within(1e-9));
        assertThat(astm.mm("10 straight", Measure.WAIST_GIRTH)).isCloseTo(30.5 * 25.4, within(1e-9));
        assertThat(astm.mm("10 straight", Measure.UPPER_CHEST_GIRTH)).isCloseTo(36.75 * 25.4, within(1e-9));
        assertThat(astm.mm("10 straight", Measure.UNDER_BUST_GIRTH)).isCloseTo(31 * 25.4, within(1e-9));
        assertThat(astm.has(Measure.HIP_GIRTH)).isFalse();
    }

    @Test
    void anUnknownTableNamesTheTablesThereAre() {
        assertThatThrownBy(() -> SizeTables.named("children"))
                .isInstanceOfSatisfying(UnknownTableException.class, e -> {
                    assertThat(e.name()).isEqualTo("children");
                    assertThat(e.known()).contains("misses");
                })
                .hasMessageStartingWith("There is no size table \"children\"; there are misses, women,");
        assertThat(SizeTables.named("MEN").name()).isEqualTo("men (from survey)");
        assertThat(SizeTables.named("miss-petite").name()).isEqualTo("miss petite");
    }
}
