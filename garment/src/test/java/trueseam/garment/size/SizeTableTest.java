package trueseam.garment.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.measure.Measure;

class SizeTableTest {
    private static final SizeTable TABLE = new SizeTable(
            "misses",
            "two sizes of the US pattern companies' chart, second-hand",
            List.of(Measure.BUST_GIRTH, Measure.WAIST_GIRTH),
            List.of(row("12", 863.6, 673.1), row("14", 914.4, 711.2)));

    private static SizeRow row(String size, double bustMm, double waistMm) {
        return new SizeRow(size, Map.of(Measure.WAIST_GIRTH, waistMm, Measure.BUST_GIRTH, bustMm));
    }

    @Test
    void aSizeIsABodyThatSaysItComesFromATable() {
        Body body = TABLE.body("14");
        assertThat(body.label()).isEqualTo("misses 14");
        assertThat(body.mm(Measure.BUST_GIRTH)).isEqualTo(914.4);
        assertThat(body.value(Measure.WAIST_GIRTH).orElseThrow().origin()).isEqualTo(Origin.TABLE);
        assertThat(TABLE.row("14").asBody().readings()).isEqualTo(body.readings());
    }

    @Test
    void aComputedColumnCarriesItsNote() {
        SizeTable taller = TABLE.withColumn(
                Measure.STATURE, Map.of("12", 1663.7, "14", 1663.7), "computed, the middle of the stated height");
        assertThat(taller.body("12").value(Measure.STATURE)).hasValueSatisfying(value -> {
            assertThat(value.mm()).isEqualTo(1663.7);
            assertThat(value.note()).isEqualTo("computed, the middle of the stated height");
        });
        assertThat(taller.withColumn(Measure.HIP_GIRTH, Map.of("12", 914.4, "14", 965.2), "bust + 2 in")
                        .notes())
                .containsOnlyKeys(Measure.STATURE, Measure.HIP_GIRTH);
        assertThat(TABLE.has(Measure.STATURE)).isFalse();
        assertThatThrownBy(() -> TABLE.withColumn(Measure.STATURE, Map.of("12", 1663.7), "computed"))
                .isInstanceOf(SizeTableException.class)
                .hasMessageContaining("gives no stature for size 14");
    }

    @Test
    void gradeStepsAreTheDifferencesFromSizeToSize() {
        assertThat(TABLE.gradeSteps(Measure.BUST_GIRTH)).singleElement().satisfies(step -> assertThat(step)
                .isCloseTo(50.8, within(1e-9)));
    }

    @Test
    void anUnknownSizeNamesTheSizesThereAre() {
        assertThatThrownBy(() -> TABLE.row("15"))
                .isInstanceOfSatisfying(SizeTableException.class, e -> {
                    assertThat(e.table()).isEqualTo("misses");
                    assertThat(e.wanted()).isEqualTo("15");
                })
                .hasMessage("Size table \"misses\" has no size 15; it has 12, 14.");
        assertThat(TABLE.row(" 14 ").size()).isEqualTo("14");
    }

    @Test
    void anUnknownColumnNamesTheColumnsThereAre() {
        assertThatThrownBy(() -> TABLE.mm("14", Measure.HIP_GIRTH))
                .hasMessage("Size table \"misses\" has no column hip girth; it has bust girth, waist girth.");
        assertThat(TABLE.mm("14", Measure.WAIST_GIRTH)).isEqualTo(711.2);
    }

    @Test
    void aTableIsWhole() {
        List<Measure> columns = List.of(Measure.BUST_GIRTH, Measure.WAIST_GIRTH);
        assertThatThrownBy(() -> new SizeTable("t", "s", columns, List.of(row("1", 900, 700), row("1", 920, 720))))
                .isInstanceOf(SizeTableException.class)
                .hasMessageContaining("size 1 twice");
        assertThatThrownBy(() -> new SizeTable("t", "s", List.of(Measure.BUST_GIRTH), List.of(row("1", 900, 700))))
                .isInstanceOf(SizeTableException.class)
                .hasMessageContaining("not a column");
        assertThatThrownBy(() -> new SizeTable("t", "s", columns, List.of())).isInstanceOf(SizeTableException.class);
        assertThatThrownBy(() -> new SizeTable("t", " ", columns, List.of(row("1", 900, 700))))
                .isInstanceOf(SizeTableException.class);
        assertThatThrownBy(() -> new SizeTable(
                        "t",
                        "s",
                        columns,
                        List.of(row("1", 900, 700)),
                        new Figure("", ""),
                        Map.of(Measure.HIP_GIRTH, "?")))
                .isInstanceOf(SizeTableException.class)
                .hasMessageContaining("note on hip girth");
        assertThatThrownBy(() -> new Figure("two\nlines", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> row("1", -900, 700)).isInstanceOf(IllegalArgumentException.class);
    }
}
