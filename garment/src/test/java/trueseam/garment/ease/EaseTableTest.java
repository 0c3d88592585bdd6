package trueseam.garment.ease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.MissingMeasureException;
import trueseam.garment.body.Reading;
import trueseam.garment.measure.Measure;

class EaseTableTest {
    private static final EaseTable TABLE = EaseTable.standard();

    @ParameterizedTest
    @CsvSource({
        // Sewing and Serging Handbook: bust 2 1/2 to 4, waist about 1, hip 2 to 2 1/2.
        "DRESS, BUST_GIRTH, 2.5, 3",
        "BODICE, WAIST_GIRTH, 1, 1",
        "SKIRT, HIP_GIRTH, 2, 2.5",
        // Costume construction text, ch. 16: trousers seat 1 1/2 to 2, thigh 1 at least; Guide C-209: thigh 1 to 2,
        // knee at least 1.
        "TROUSERS, HIP_GIRTH, 1.5, 2",
        "TROUSERS, THIGH_GIRTH, 1, 1.5",
        "TROUSERS, KNEE_GIRTH, 1, 1",
        // Set-in Sleeve Solutions: upper arm 2 at least.
        "BODICE, UPPER_ARM_GIRTH, 2, 2",
        // Common practice.
        "BODICE, BACK_WAIST_LENGTH, 0.25, 0.25",
        "BODICE, ACROSS_BACK_WIDTH, 0.5, 0.5",
        "BODICE, NECK_BASE_GIRTH, 0.25, 0.25",
        "BODICE, WRIST_GIRTH, 0.5, 0.5",
        "TROUSERS, TOTAL_CROTCH_LENGTH, 1, 1.5"
    })
    void easesAreThePublishedOnes(GarmentKind kind, Measure measure, double minimumIn, double usualIn) {
        EaseRow row = TABLE.wearing(kind, measure).orElseThrow();
        assertThat(row.minimumMm()).isCloseTo(minimumIn * 25.4, within(1e-9));
        assertThat(row.usualMm()).isCloseTo(usualIn * 25.4, within(1e-9));
        assertThat(row.source()).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource({
        // NMSU Guide C-209: 1/2 in if the hip is under 36, 3/4 between 36 and 38, 1 if over 38; worked example: hips
        // 35, 37, 39.
        "35, 0.5",
        "35.99, 0.5",
        "36, 0.75",
        "37, 0.75",
        "38, 0.75",
        "38.01, 1",
        "39, 1",
        "60, 1"
    })
    void crotchDepthEaseGoesByTheHip(double hipIn, double easeIn) {
        Body body = Body.named("Ann").with(Reading.taped(Measure.HIP_GIRTH, hipIn * 25.4));
        EaseRow row =
                TABLE.wearing(GarmentKind.TROUSERS, Measure.BODY_RISE, body).orElseThrow();
        assertThat(row.minimumMm()).isCloseTo(easeIn * 25.4, within(1e-9));
    }

    @Test
    void crotchDepthEaseNeedsTheHip() {
        assertThat(TABLE.wearing(GarmentKind.TROUSERS, Measure.BODY_RISE)).isEmpty();
        assertThatThrownBy(() -> TABLE.wearing(GarmentKind.TROUSERS, Measure.BODY_RISE, Body.named("Ann")))
                .isInstanceOf(MissingMeasureException.class)
                .hasMessageContaining("hip girth");
    }

    @Test
    void otherEasesDoNotAskForABody() {
        Body bare = Body.named("Ann");
        for (GarmentKind kind : GarmentKind.values()) {
            for (Measure measure : Measure.values()) {
                if (measure != Measure.BODY_RISE) {
                    assertThat(TABLE.wearing(kind, measure, bare)).isEqualTo(TABLE.wearing(kind, measure));
                }
            }
        }
        assertThat(TABLE.wearing(GarmentKind.SKIRT, Measure.BUST_GIRTH)).isEqualTo(Optional.empty());
    }

    @Test
    void frontAndBackCrotchShareTheTotalsEase() {
        EaseRow total =
                TABLE.wearing(GarmentKind.TROUSERS, Measure.TOTAL_CROTCH_LENGTH).orElseThrow();
        EaseRow front =
                TABLE.wearing(GarmentKind.TROUSERS, Measure.FRONT_CROTCH_LENGTH).orElseThrow();
        EaseRow back =
                TABLE.wearing(GarmentKind.TROUSERS, Measure.BACK_CROTCH_LENGTH).orElseThrow();
        assertThat(front.minimumMm() + back.minimumMm()).isCloseTo(total.minimumMm(), within(1e-9));
        assertThat(front.usualMm() + back.usualMm()).isCloseTo(total.usualMm(), within(1e-9));
    }

    @Test
    void aRowKeepsItsOrder() {
        assertThatThrownBy(() -> new EaseRow(5, 4, "none")).isInstanceOf(IllegalArgumentException.class);
    }
}
