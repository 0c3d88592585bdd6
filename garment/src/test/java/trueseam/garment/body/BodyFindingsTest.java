package trueseam.garment.body;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.measure.Measure;

class BodyFindingsTest {

    @Test
    void readingsWithinMeasuringErrorAreQuiet() {
        // ISO 20685: 9 mm on large girths, 4 mm on small ones.
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.BUST_GIRTH, 900))
                .with(Reading.taped(Measure.BUST_GIRTH, 909))
                .with(Reading.taped(Measure.WRIST_GIRTH, 160))
                .with(Reading.taped(Measure.WRIST_GIRTH, 164));
        assertThat(body.findings()).isEmpty();
    }

    @Test
    void readingsFurtherApartAskForAThird() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.WRIST_GIRTH, 160))
                .with(Reading.taped(Measure.WRIST_GIRTH, 165));
        assertThat(body.findings())
                .containsExactly(Finding.warning(
                        "wrist girth",
                        "2 readings lie 5 mm (3/16 in) apart, more than the 4 mm (3/16 in) of measuring error;"
                                + " measure once more."));
    }

    @Test
    void unequalSidesAreANote() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 120))
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.RIGHT, 127));
        assertThat(body.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.place()).isEqualTo("shoulder length");
            assertThat(finding.sentence()).startsWith("The right is 7 mm (1/4 in) more than the other side");
        });
    }

    @Test
    void frontAndBackCrotchMustMakeTheTotal() {
        // Worked example: body 28 in, front 13 in, back 15 in (common practice).
        Body whole = Body.named("Ann")
                .with(Reading.taped(Measure.TOTAL_CROTCH_LENGTH, 28 * 25.4))
                .with(Reading.taped(Measure.FRONT_CROTCH_LENGTH, 13 * 25.4));
        assertThat(whole.with(Reading.taped(Measure.BACK_CROTCH_LENGTH, 15 * 25.4))
                        .findings())
                .isEmpty();
        assertThat(whole.with(Reading.taped(Measure.BACK_CROTCH_LENGTH, 14 * 25.4))
                        .findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.place()).isEqualTo("total crotch length");
                    assertThat(finding.sentence()).contains("711 mm (28 in)").contains("686 mm (27 in)");
                });
    }

    @Test
    void legLengthsMustAgreeWithTheRise() {
        Body legs = Body.named("Ann")
                .with(Reading.taped(Measure.OUTSIDE_LEG_LENGTH, 1040))
                .with(Reading.taped(Measure.INSIDE_LEG_LENGTH, 770));
        assertThat(legs.with(Reading.taped(Measure.BODY_RISE, 260)).findings()).isEmpty();
        assertThat(legs.with(Reading.taped(Measure.BODY_RISE, 240)).findings())
                .extracting(Finding::place)
                .containsExactly("body rise");
    }
}
