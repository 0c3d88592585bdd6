package trueseam.output.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.length.LengthFormat;

class RulerLengthTest {

    /** One inch is 25.4 mm (international yard and pound agreement, 1959); the fractions by hand. */
    @ParameterizedTest
    @CsvSource({
        "12.7, 1/2 in",
        "9.525, 3/8 in",
        "2.4454, 3/32 in",
        "7.14375, 9/32 in",
        "28.575, 1 1/8 in",
        "25.4, 1 in",
        "-12.7, 1/2 in",
        "0.3, less than 1/32 in"
    })
    void aShareIsSetOutToAThirtySecondOfAnInch(double mm, String shown) {
        assertThat(new RulerLength(LengthFormat.inches(8)).show(mm)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"6.35, 0.65 cm, 6.5 mm", "10, 1 cm, 10 mm", "0.5, 0.05 cm, 0.5 mm", "120.2, 12 cm, 120 mm"})
    void metricSharesAreSetOutToHalfAMillimetre(double mm, String cm, String inMm) {
        assertThat(new RulerLength(LengthFormat.centimetres()).show(mm)).isEqualTo(cm);
        assertThat(new RulerLength(LengthFormat.millimetres()).show(mm)).isEqualTo(inMm);
    }

    @Test
    void aChangeCarriesItsSign() {
        RulerLength ruler = new RulerLength(LengthFormat.inches(8));
        assertThat(ruler.showSigned(12.7)).isEqualTo("+1/2 in");
        assertThat(ruler.showSigned(-6.35)).isEqualTo("-1/4 in");
        assertThat(ruler.showSigned(-0.01)).isEqualTo("less than 1/32 in");
    }
}
