package trueseam.cloth.goods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Cloth in numbers: trade.md section 9. */
class ClothTest {

    private static final double YARD_MM = 914.4;

    private static Cloth shrinking(double part) {
        return new Cloth(1500, Layers.SINGLE, false, part, 0, 10, 0, 0, OptionalDouble.empty(), List.of());
    }

    @Test
    void moreIsBoughtWhereItShrinks() {
        // Length = required / (1 - s): 3 yd at 5 % = 3.158; 4 yd at 10 % = 4.444 (trade.md section 9, derived there).
        assertThat(shrinking(0.05).toBuyMm(3 * YARD_MM) / YARD_MM).isCloseTo(3.158, within(0.0005));
        assertThat(shrinking(0.10).toBuyMm(4 * YARD_MM) / YARD_MM).isCloseTo(4.444, within(0.0005));
    }

    @Test
    void halfOfFoldedClothIsFree() {
        // Half widths 22 1/2, 27, 30 in of 45, 54, 60 (trade.md section 9, [THR151]), here without selvages.
        for (double[] w : new double[][] {{45, 22.5}, {54, 27}, {60, 30}}) {
            Cloth cloth =
                    new Cloth(w[0] * 25.4, Layers.LENGTHWISE, false, 0, 0, 0, 0, 0, OptionalDouble.empty(), List.of());
            assertThat(cloth.usableMm() / 25.4).isCloseTo(w[1], within(1e-9));
        }
    }

    @Test
    void shopsCutInEighthsOfAYardAndInFiveCentimetres() {
        assertThat(CutLength.EIGHTH_YARD.roundUpMm(2 * YARD_MM + 1)).isCloseTo(2.125 * YARD_MM, within(1e-9));
        assertThat(CutLength.EIGHTH_YARD.roundUpMm(2.125 * YARD_MM)).isCloseTo(2.125 * YARD_MM, within(1e-9));
        assertThat(CutLength.FIVE_CM.roundUpMm(1201)).isEqualTo(1250);
        assertThat(CutLength.FIVE_CM.roundUpMm(1200)).isEqualTo(1200);
    }

    @Test
    void clothWithANapIsNotFoldedCrosswise() {
        assertThatThrownBy(() ->
                        new Cloth(1500, Layers.CROSSWISE, true, 0, 0, 10, 0, 0, OptionalDouble.empty(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fold it lengthwise");
    }
}
