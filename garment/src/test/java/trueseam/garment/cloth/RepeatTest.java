package trueseam.garment.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** More cloth for a plaid: worked example 23 of the trade facts, section 6. */
class RepeatTest {

    private static final double IN = 25.4;

    @ParameterizedTest
    @CsvSource({"1.25, 2, 2.5", "4.25, 2, 8.5", "4.25, 0, 0"})
    void aPlaidTakesOneRepeatMoreForEachPieceAboveAnother(double repeatIn, int stacked, double moreIn) {
        // Example 23, P: a web note on plaid yardage (web:plaid): 1 1/4 x 2 is 2 1/2, 4 1/4 x 2 is 8 1/2 more.
        assertThat(new Repeat(repeatIn * IN).surchargeMm(stacked)).isCloseTo(moreIn * IN, within(1e-9));
    }

    @Test
    void aRepeatOfNothingIsRefused() {
        assertThatThrownBy(() -> new Repeat(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Repeat(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
