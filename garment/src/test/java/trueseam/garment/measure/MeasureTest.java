package trueseam.garment.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {

    @Test
    void thereAreFortyOneMeasuresOfTheBody() {
        assertThat(Arrays.stream(Measure.values()).filter(measure -> !measure.isChosen()))
                .hasSize(41);
    }

    @ParameterizedTest
    @EnumSource
    void everyMeasureIsDescribedAndFoundByItsNames(Measure measure) {
        assertThat(measure.term()).isNotBlank().isLowerCase();
        assertThat(measure.workroomLabel()).isNotBlank().isLowerCase();
        assertThat(measure.tapePath()).hasSizeGreaterThan(30).endsWith(".");
        assertThat(measure.termConfirmedBy()).isNotBlank();
        assertThat(Measure.named(measure.term())).isEqualTo(measure);
        assertThat(Measure.named(measure.workroomLabel())).isEqualTo(measure);
        assertThat(Measure.named(measure.name())).isEqualTo(measure);
    }

    @ParameterizedTest
    @CsvSource({
        // Terms of ISO 8559:1989, EN 13402-1 and ASTM D5585 as listed in the source table of measures.
        "Bust girth, BUST_GIRTH",
        "UPPER-CHEST GIRTH, UPPER_CHEST_GIRTH",
        "neck-base girth, NECK_BASE_GIRTH",
        "scye depth, SCYE_DEPTH",
        "Armscye Girth, ARMSCYE_GIRTH",
        "body rise, BODY_RISE",
        "inside leg length, INSIDE_LEG_LENGTH",
        // Workroom words.
        "Full Bust, BUST_GIRTH",
        "high  bust, UPPER_CHEST_GIRTH",
        "Hip, HIP_GIRTH",
        "crotch depth, BODY_RISE",
        "back neck point to waist (back), BACK_WAIST_LENGTH",
        "waist girth (in), WAIST_GIRTH"
    })
    void namesAreFoundWhateverTheirCaseAndBlanks(String written, Measure measure) {
        assertThat(Measure.named(written)).isEqualTo(measure);
    }

    @Test
    void aNearMissIsSuggested() {
        assertThatThrownBy(() -> Measure.named("bust grith"))
                .isInstanceOfSatisfying(UnknownMeasureException.class, e -> {
                    assertThat(e.name()).isEqualTo("bust grith");
                    assertThat(e.nearest()).contains(Measure.BUST_GIRTH);
                })
                .hasMessage("\"bust grith\" is not a measure this program knows; did you mean \"bust girth\"?");
        assertThatThrownBy(() -> Measure.named("hips"))
                .isInstanceOfSatisfying(UnknownMeasureException.class, e -> assertThat(e.nearest())
                        .contains(Measure.HIP_GIRTH));
    }

    @Test
    void aFarMissIsNot() {
        assertThatThrownBy(() -> Measure.named("hat size"))
                .isInstanceOfSatisfying(UnknownMeasureException.class, e -> assertThat(e.nearest())
                        .isEmpty())
                .hasMessageContaining("standard term or workroom label");
        assertThatThrownBy(() -> Measure.named("")).isInstanceOf(UnknownMeasureException.class);
    }

    @ParameterizedTest
    @CsvSource({
        // ISO 20685-1:2018 in Anthropometry, Apparel Sizing and Design, p. 41.
        "STATURE, 4",
        "WRIST_GIRTH, 4",
        "ACROSS_BACK_WIDTH, 4",
        "BACK_WAIST_LENGTH, 5",
        "BUST_GIRTH, 9",
        "HIP_GIRTH, 9"
    })
    void allowableErrorsAreThoseOfTheStandard(Measure measure, double mm) {
        assertThat(measure.allowableErrorMm()).isEqualTo(mm);
        assertThat(measure.errorGroup().allowedMm()).isEqualTo(mm);
    }

    @Test
    void limbsAndShouldersHaveSidesButGirthsOfTheTrunkHaveNot() {
        assertThat(Measure.SHOULDER_LENGTH.sidesMayDiffer()).isTrue();
        assertThat(Measure.BODY_RISE.sidesMayDiffer()).isTrue();
        assertThat(Measure.ARM_LENGTH.sidesMayDiffer()).isTrue();
        assertThat(Measure.BUST_GIRTH.sidesMayDiffer()).isFalse();
        assertThat(Measure.ACROSS_FRONT_WIDTH.sidesMayDiffer()).isFalse();
    }

    @Test
    void kindsFollowTheName() {
        for (Measure measure : Measure.values()) {
            if (measure.name().endsWith("_GIRTH")) {
                assertThat(measure.kind()).isEqualTo(MeasureKind.GIRTH);
            }
            if (measure.name().endsWith("_WIDTH")) {
                assertThat(measure.kind()).isEqualTo(MeasureKind.WIDTH);
            }
        }
    }
}
