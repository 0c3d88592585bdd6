package trueseam.fitting.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.intake.size.SizeTables;

/** Between two sizes (trade facts 1.1, rules 6 and 7, and section 11, item 3), and the size of a shirt (rule 11). */
class BetweenSizesTest {

    private static final double IN = 25.4;
    private static final LengthFormat SHOW = LengthFormat.inches(8);

    private static Body body(Measure measure, double inches) {
        return Body.named("Rosalind").with(Reading.taped(measure, inches * IN));
    }

    @ParameterizedTest
    @CsvSource({
        // The misses' chart: hip 38 is size 14, 40 is size 16. web:measure: small bones the smaller, large ones the
        // larger. WSC78:
        // the next larger.
        "38.5, NEAREST, 14",
        "39.5, NEAREST, 16",
        "39, NEAREST, 14",
        "39.5, SMALL_BONED, 14",
        "38.5, LARGE_BONED, 16",
        "38.5, NEXT_LARGER, 16",
        // On a size, as a tape is read, it is that size.
        "38.1, NEXT_LARGER, 14",
        "39.9, SMALL_BONED, 16",
        // Beyond the chart there is no other.
        "30, SMALL_BONED, 6",
        "60, LARGE_BONED, 20"
    })
    void theSizeIsTheOneThatTheHandbookTakes(double hipIn, BetweenSizes between, String size) {
        SizeChoice choice = SizeChoice.of(
                SizeTables.named("misses"), body(Measure.HIP_GIRTH, hipIn), GarmentKind.SKIRT, between, SHOW);
        assertThat(choice.row().size()).isEqualTo(size);
    }

    @Test
    void theReasonNamesBothSizesAndTheSource() {
        SizeChoice choice = SizeChoice.of(
                SizeTables.named("misses"),
                body(Measure.HIP_GIRTH, 38.5),
                GarmentKind.SKIRT,
                BetweenSizes.NEXT_LARGER,
                SHOW);
        assertThat(choice.reason()).contains("size 14 with 38 in", "size 16 with 40 in", "WSC78");
    }

    @ParameterizedTest
    @CsvSource({
        // WSC78: the next larger, unless the bust is very large for the rest of the figure. Chart: bust 34 is size 12,
        // 36 is 14, 38 is
        // 16. An upper chest of 35 lies between 12 and 14; a bust that decides itself, 36.5, between 14 and 16.
        "35, 40, 12",
        "35, 36.5, 16"
    })
    void theNextLargerIsNotTakenWhereTheBustIsVeryLarge(double upperIn, double bustIn, String size) {
        Body body = body(Measure.UPPER_CHEST_GIRTH, upperIn).with(Reading.taped(Measure.BUST_GIRTH, bustIn * IN));
        SizeChoice choice =
                SizeChoice.of(SizeTables.named("misses"), body, GarmentKind.BODICE, BetweenSizes.NEXT_LARGER, SHOW);
        assertThat(choice.row().size()).isEqualTo(size);
    }

    @ParameterizedTest
    @CsvSource({
        // Example 14, R: The New Dressmaker, 1921: bare neck 15 is size 15 1/2.
        "15, NEAREST, 15 1/2",
        "15.3, NEAREST, 16",
        "15.3, SMALL_BONED, 15 1/2",
        "15.2, LARGE_BONED, 16",
        "16, NEXT_LARGER, 16 1/2"
    })
    void aShirtIsHalfAnInchMoreThanTheBareNeck(double neckIn, BetweenSizes between, String size) {
        ShirtSize shirt = ShirtSize.of(body(Measure.NECK_GIRTH, neckIn), between, SHOW);
        assertThat(shirt.label()).isEqualTo(size);
        assertThat(shirt.reason()).contains("The New Dressmaker, 1921");
    }

    @Test
    void aShirtNeedsTheNeck() {
        assertThatThrownBy(() -> ShirtSize.of(body(Measure.BUST_GIRTH, 38), BetweenSizes.NEAREST, SHOW))
                .isInstanceOf(NoSizeException.class)
                .hasMessageContaining("neck girth");
    }
}
