package trueseam.garment.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.measure.Measure;

class PlausibilityTest {
    private static final Plausibility LIMITS = new Plausibility(List.of(
            new Limit(Measure.BUST_GIRTH, Population.ALL, 380, 760, 1330, 2660, "invented for this test"),
            new Limit(Measure.BUST_GIRTH, Population.WOMEN, 370, 740, 1220, 2440, "invented for this test"),
            new Limit(Measure.SHOULDER_LENGTH, Population.ALL, 55, 110, 182, 364, "invented for this test")));

    @Test
    void usualValuesAndUnknownMeasuresAreNotQuestioned() {
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 760, Population.ALL)).isEmpty();
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 1330, Population.ALL)).isEmpty();
        assertThat(LIMITS.question(Measure.BODY_RISE, 1, Population.ALL)).isEmpty();
    }

    @Test
    void rareValuesAreWarningsAndImpossibleOnesFailures() {
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 1340, Population.ALL).orElseThrow())
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                    assertThat(finding.place()).isEqualTo("bust girth");
                    assertThat(finding.sentence())
                            .contains("1340 mm (52 3/4 in)")
                            .contains("760 mm (29 7/8 in)");
                });
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 3000, Population.ALL))
                .map(Finding::severity)
                .contains(Severity.FAILURE);
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 200, Population.ALL))
                .map(Finding::severity)
                .contains(Severity.FAILURE);
    }

    @Test
    void aSexWithoutLimitsOfItsOwnTakesThoseOfAll() {
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 1300, Population.WOMEN)).isPresent();
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 1300, Population.MEN)).isEmpty();
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 1340, Population.MEN)).isPresent();
    }

    @Test
    void aLikelySlipOfTheUnitIsNamed() {
        // 97 read as inches is 2463.8 mm; as centimetres it is usual.
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 97 * 25.4, Population.ALL)
                        .orElseThrow()
                        .sentence())
                .contains("were cm meant instead of in?");
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 97, Population.ALL)
                        .orElseThrow()
                        .sentence())
                .contains("were cm meant instead of mm?");
        assertThat(LIMITS.question(Measure.BUST_GIRTH, 5000, Population.ALL)
                        .orElseThrow()
                        .sentence())
                .doesNotContain("meant");
    }

    @Test
    void aBodyIsQuestionedSideBySide() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.BUST_GIRTH, 950))
                .with(Reading.taped(Measure.WAIST_GIRTH, 1))
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 120))
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.RIGHT, 190));
        assertThat(LIMITS.question(body, Population.ALL))
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence()).contains("190 mm"));
        // A measure taken for both sides is questioned once, not for each side again.
        assertThat(LIMITS.question(Body.named("Ann").with(Reading.taped(Measure.SHOULDER_LENGTH, 190)), Population.ALL))
                .hasSize(1);
    }

    @Test
    void limitsStandInOrder() {
        assertThatThrownBy(() -> new Limit(Measure.BUST_GIRTH, Population.ALL, 1, 5, 4, 9, "none"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bust girth");
        assertThatThrownBy(() -> new Limit(Measure.BUST_GIRTH, Population.ALL, 3, 2, 4, 9, "none"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Limit(Measure.BUST_GIRTH, Population.ALL, 1, 2, 4, 3, "none"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
