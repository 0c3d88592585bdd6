package trueseam.intake.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes as people print them at a test square. 1 in = 25.4 mm exactly (international yard and pound agreement, 1959). */
class SaidSizeTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "5 cm; 50; 50",
                "5cm x 5cm; 50; 50",
                "2 in x 2 in; 50.8; 50.8",
                "10 x 10 cm; 100; 100",
                "10 cm \u00d7 15 cm; 100; 150",
                "TEST SQUARE 4\"; 101.6; 101.6",
                "this square should measure 2 1/2 inches; 63.5; 63.5",
                "1\u00bd in; 38.1; 38.1",
                "3/4\"; 19.05; 19.05",
                "test: 2,5 cm; 25; 25",
                "533mm; 533; 533",
                "50 mm each side; 50; 50"
            })
    void aSizeIsReadInItsUnit(String text, double across, double up) {
        SaidSize said = SaidSize.of(text).orElseThrow();
        assertThat(said.sizes()).hasSize(1);
        assertThat(said.sizes().get(0).acrossMm()).isCloseTo(across, within(1e-9));
        assertThat(said.sizes().get(0).upMm()).isCloseTo(up, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 inch / 2.5 cm", "2 in (5.08 cm)", "test square 4 in = 10.16 cm"})
    void bothUnitsAreRead(String text) {
        assertThat(SaidSize.of(text).orElseThrow().sizes()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "seam allowance 1.5 cm included",
                "cut 2",
                "size 14",
                "ease 2 in at the cap",
                "hem 38 mm",
                "",
                "5",
                "waist 700mm"
            })
    void otherWordsAreNoTestSize(String text) {
        assertThat(SaidSize.of(text)).isEmpty();
    }
}
