package trueseam.garment.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {

    @ParameterizedTest
    @CsvSource({
        "952.5, 37 1/2 in",
        "-15.875, -5/8 in",
        "0, 0 in",
        "25.4, 1 in",
        "12.7, 1/2 in",
        // 1/16 in is half of an eighth: half up.
        "1.5875, 1/8 in",
        "-1.5875, -1/8 in",
        "1.5874, 0 in",
        "-1.5874, 0 in",
        // All but a sixteenth short of 38: carried into the whole inch.
        "964, 38 in"
    })
    void showsEighthsOfAnInch(double mm, String shown) {
        assertThat(LengthFormat.inches(8).show(mm)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"1.5875, 1/16 in", "36.5125, 1 7/16 in", "15.875, 5/8 in", "0.79375, 1/16 in", "0.7937, 0 in"})
    void showsSixteenthsOfAnInch(double mm, String shown) {
        assertThat(LengthFormat.inches(16).show(mm)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "952.5, 95.3 cm, 953 mm",
        "952.49, 95.2 cm, 952 mm",
        "-0.5, -0.1 cm, -1 mm",
        "-0.49, 0 cm, 0 mm",
        "950, 95 cm, 950 mm",
        "6, 0.6 cm, 6 mm"
    })
    void showsMetric(double mm, String cm, String wholeMm) {
        assertThat(LengthFormat.centimetres().show(mm)).isEqualTo(cm);
        assertThat(LengthFormat.millimetres().show(mm)).isEqualTo(wholeMm);
    }

    @Test
    void changesCarryTheirSign() {
        LengthFormat eighths = LengthFormat.inches(8);
        assertThat(eighths.showSigned(12.7)).isEqualTo("+1/2 in");
        assertThat(eighths.showSigned(-12.7)).isEqualTo("-1/2 in");
        assertThat(eighths.showSigned(0.1)).isEqualTo("0 in");
        assertThat(eighths.showSigned(-0.1)).isEqualTo("0 in");
        assertThat(LengthFormat.centimetres().showSigned(6)).isEqualTo("+0.6 cm");
    }

    @Test
    void theNumberCanStandWithoutItsUnit() {
        assertThat(LengthFormat.inches(8).number(952.5)).isEqualTo("37 1/2");
        assertThat(LengthFormat.usual(LengthUnit.CENTIMETRE).number(952)).isEqualTo("95.2");
    }

    @Test
    void theStepIsTheSmallestDifferenceShown() {
        assertThat(LengthFormat.inches(8).stepMm()).isEqualTo(3.175);
        assertThat(LengthFormat.inches(16).stepMm()).isEqualTo(1.5875);
        assertThat(LengthFormat.centimetres().stepMm()).isEqualTo(1);
    }

    @Test
    void thereAreNoOtherSteps() {
        assertThatThrownBy(() -> LengthFormat.inches(10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1/10 in");
        assertThatThrownBy(() -> new LengthFormat(LengthUnit.MILLIMETRE, 8))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LengthFormat.millimetres().show(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
