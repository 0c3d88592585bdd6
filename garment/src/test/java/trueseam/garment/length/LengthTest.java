package trueseam.garment.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One inch is 25.4 mm exactly: international yard and pound agreement of 1959 (also ISO 80000-3). */
class LengthTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "37 1/2 in   | 952.5",
                "37 1/2      | 952.5",
                "37.5 in     | 952.5",
                "37,5 in     | 952.5",
                "37-1/2 in   | 952.5",
                "37½ in      | 952.5",
                "37 ½\"      | 952.5",
                "37 1/2”     | 952.5",
                "37 1/2″     | 952.5",
                "37 1/2 ''   | 952.5",
                "37 1⁄2 inches | 952.5",
                "37 1 / 2 in | 952.5",
                "5/8\"       | 15.875",
                "⅝ in        | 15.875",
                "1 1/4 in    | 31.75",
                "1¼ in.      | 31.75",
                "3/8         | 9.525",
                "⅜           | 9.525",
                "95 cm       | 950",
                "95cm        | 950",
                "95,2 cm     | 952",
                "95.25 Cm    | 952.5",
                "952mm       | 952",
                "952 MM      | 952",
                ".5 in       | 12.7",
                ",5 cm       | 5",
                "0           | 0",
                "-5/8 in     | -15.875",
                "−5/8 in     | -15.875",
                "- 5/8 in    | -15.875",
                "+1/2 in     | 12.7",
                "+ 1/2 in    | 12.7",
                "-1 1/2      | -38.1",
                "5 ft 6 in   | 1676.4",
                "5' 6\"      | 1676.4",
                "5'6 1/2\"   | 1689.1",
                "5’6”        | 1676.4",
                "5 ft        | 1524",
                "5 ft. 5 in  | 1651",
                "1.68 m      | 1680",
                "1/3 in      | 8.466666666666667"
            })
    void readsWhatDressmakersWrite(String written, double mm) {
        assertThat(Length.parse(written, LengthUnit.INCH).mm()).isEqualTo(mm);
    }

    @ParameterizedTest
    @CsvSource({"INCH, 241.3", "CENTIMETRE, 95", "MILLIMETRE, 9.5"})
    void aBareNumberIsInTheUnitAskedFor(LengthUnit unit, double mm) {
        assertThat(Length.parse("9.5", unit).mm()).isEqualTo(mm);
    }

    @Test
    void aBareFractionMayBeMetricToo() {
        assertThat(Length.parse("9 1/2", LengthUnit.CENTIMETRE).mm()).isEqualTo(95);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``            | nothing is written",
                "`   `         | nothing is written",
                "in            | the number is missing",
                "5 ft in       | the number is missing",
                "about 37      | a number and a unit were expected",
                "37 1/0        | the fraction is over zero",
                "37 3/2        | the fraction is not below one",
                "37 8/8        | the fraction is not below one",
                "11/2          | the fraction is not below one",
                "37.5 1/2      | a decimal and a fraction stand side by side",
                "37 ell        | the unit \"ell\" is not known",
                "1.234,5 cm    | a number and a unit were expected",
                "37 1/2 1/4    | a number and a unit were expected",
                "--3           | a number and a unit were expected",
                "NaN           | the number is missing",
                "1e3           | a number and a unit were expected",
                "99999999999 in | it is longer than 10 km"
            })
    void refusesWhatIsNoLengthInOneSentence(String written, String reason) {
        assertThatThrownBy(() -> Length.parse(written, LengthUnit.INCH))
                .isInstanceOfSatisfying(LengthTextException.class, e -> {
                    assertThat(e.text()).isEqualTo(written);
                    assertThat(e.reason()).isEqualTo(reason);
                    assertThat(e)
                            .hasMessage("\"" + written + "\" is not a length: " + reason
                                    + ". Write for example 37 1/2 in, 5/8\" or 95.2 cm.");
                });
    }

    @Test
    void factoriesAreExact() {
        assertThat(Length.ofInches(37.5).mm()).isEqualTo(952.5);
        // 0.1 in is 2.54 mm; the plain product 0.1 * 25.4 in doubles is 2.54 too, 0.7 * 25.4 is not 17.78.
        assertThat(Length.ofInches(0.7).mm()).isEqualTo(17.78);
        assertThat(Length.ofCm(95.2).mm()).isEqualTo(952);
        assertThat(Length.ofMm(3).mm()).isEqualTo(3);
        assertThat(Length.ofInches(37.5).inches()).isEqualTo(37.5);
        assertThat(Length.ofInches(2).in(LengthUnit.CENTIMETRE)).isEqualTo(5.08);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aLengthIsFinite(double mm) {
        assertThatThrownBy(() -> Length.ofMm(mm)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.ofInches(mm)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void thereIsOnlyOneZero() {
        assertThat(Length.ofMm(-0.0)).isEqualTo(Length.ofMm(0.0));
        assertThat(Length.parse("-0 in", LengthUnit.INCH)).isEqualTo(Length.ofMm(0.0));
    }

    @Test
    void lengthsSortByLength() {
        assertThat(Length.ofInches(1)).isGreaterThan(Length.ofCm(2.5)).isLessThan(Length.ofMm(26));
    }
}
