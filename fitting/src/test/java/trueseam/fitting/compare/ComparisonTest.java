package trueseam.fitting.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.Drafted;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeRow;

/** Which differences matter, and who decides: trade facts, 2.2 and section 10. */
class ComparisonTest {

    private static final double IN = 25.4;
    private static final FitChoices USUAL = Drafted.USUAL;

    private static Body body(Measure measure, double mm) {
        return Body.named("somebody").with(Reading.taped(measure, mm));
    }

    /** By the table: the table's body has the measure, the flat pattern has so much ease. */
    private static Need byTable(GarmentKind kind, Measure measure, double needMm, double easeMm, FitChoices choices) {
        double table = 900;
        return new Comparison(
                        body(measure, table + needMm),
                        kind,
                        Optional.of(new SizeRow("14", Map.of(measure, table))),
                        Map.of(measure, table + easeMm),
                        Map.of(),
                        choices)
                .needs()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "BUST_GIRTH, 12.7, LEAVE",
        "BUST_GIRTH, -12.7, LEAVE",
        "BUST_GIRTH, 12.8, ALTER",
        "BUST_GIRTH, -12.8, ALTER",
        "BACK_WAIST_LENGTH, 12.7, LEAVE",
        "BACK_WAIST_LENGTH, 13, ALTER"
    })
    void halfAnInchOrLessIsLeftWhereverItIs(Measure measure, double needMm, Verdict verdict) {
        // Common practice, the half-inch rule; ease ample, so that the wearing ease has no say.
        assertThat(byTable(GarmentKind.BODICE, measure, needMm, 150, USUAL)
                        .decision()
                        .verdict())
                .isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({
        // Section 10: max(6 mm girth, 3 mm width or short length, 6 mm length), x 1 fitted, x 1.5 semi-fitted, x 2
        // loose.
        "BODICE, BUST_GIRTH, 1, 6",
        "BODICE, BUST_GIRTH, 1.5, 9",
        "BODICE, BUST_GIRTH, 2, 12",
        "BODICE, WRIST_GIRTH, 1, 3",
        "BODICE, WRIST_GIRTH, 2, 6",
        "BODICE, BACK_WAIST_LENGTH, 1, 6",
        "BODICE, ARM_LENGTH, 1.5, 9",
        "SKIRT, HIP_GIRTH, 1, 6",
        "TROUSERS, INSIDE_LEG_LENGTH, 2, 12",
        "BODICE, ACROSS_FRONT_WIDTH, 1, 3",
        "BODICE, SHOULDER_LENGTH, 1.5, 4.5"
    })
    void theFinerRuleLeavesAQuarterInchOrAnEighthAndMoreOnLooserGarments(
            GarmentKind kind, Measure measure, double looseness, double leftMm) {
        FitChoices fine = USUAL.withRule(Rule.FINE, looseness);
        for (int sign : new int[] {-1, 1}) {
            assertThat(byTable(kind, measure, sign * leftMm, 150, fine)
                            .decision()
                            .verdict())
                    .isEqualTo(Verdict.LEAVE);
            assertThat(byTable(kind, measure, sign * (leftMm + 0.1), 150, fine)
                            .decision()
                            .verdict())
                    .isNotEqualTo(Verdict.LEAVE);
        }
    }

    @ParameterizedTest
    @CsvSource({"HALF_INCH", "FINE"})
    void nothingIsLeftThatFallsBelowTheLeastWearingEase(Rule rule) {
        // Costume construction text, Central Washington University, chs. 16 and 17: wearing ease is not used up to
        // avoid an
        // alteration. Bust: 2 1/2 in at least. Here 2 5/8 in of ease and 1/4 in (under 6.35 mm) too small.
        Need need = byTable(GarmentKind.BODICE, Measure.BUST_GIRTH, 5.9, 2.625 * IN, USUAL.withRule(rule, 1));
        assertThat(need.decision().verdict()).isEqualTo(Verdict.ALTER);
        assertThat(need.decision().amountMm()).isCloseTo(5.9, within(1e-9));
        assertThat(need.decision().reason()).contains("least wearing ease");
    }

    @Test
    void aGarmentThatIsSlightlyTooLargeIsNotAlteredForItsLeastEase() {
        Need need = byTable(GarmentKind.BODICE, Measure.BUST_GIRTH, -5, 2 * IN, USUAL);
        assertThat(need.decision().verdict()).isEqualTo(Verdict.LEAVE);
    }

    @Test
    void theDressmakerOverrulesEveryRule() {
        Measure bust = Measure.BUST_GIRTH;
        Need left = byTable(GarmentKind.BODICE, bust, 60, 76, USUAL.withOverrules(Map.of(bust, new Overrule.Leave())));
        assertThat(left.decision()).isEqualTo(new Decision(Verdict.LEAVE, 0, "Left alone, as you decided.", true));
        Need altered =
                byTable(GarmentKind.BODICE, bust, 3, 150, USUAL.withOverrules(Map.of(bust, new Overrule.Alter())));
        assertThat(altered.decision().verdict()).isEqualTo(Verdict.ALTER);
        assertThat(altered.decision().amountMm()).isCloseTo(3, within(1e-9));
        Need own = byTable(
                GarmentKind.BODICE, bust, 3, 150, USUAL.withOverrules(Map.of(bust, new Overrule.Amount(-25.4))));
        assertThat(own.decision().amountMm()).isEqualTo(-25.4);
        assertThat(own.decision().overruled()).isTrue();
    }

    @Test
    void aMeasureWithoutAnAlterationIsSettledOnTheTrialGarment() {
        Need need = byTable(GarmentKind.BODICE, Measure.FRONT_WAIST_LENGTH_OVER_BUST, 30, 5, USUAL);
        assertThat(need.decision().verdict()).isEqualTo(Verdict.TRY_ON);
        assertThat(need.decision().isAltered()).isFalse();
        assertThat(need.decision().reason()).contains("trial garment");
    }

    @Test
    void byTheTableTheEaseIsInThePaperAndByTheFlatPatternItIsAdded() {
        Body body = body(Measure.HIP_GIRTH, 1000);
        SizeRow row = new SizeRow("14", Map.of(Measure.HIP_GIRTH, 965.0));
        Map<Measure, Double> flat = Map.of(Measure.HIP_GIRTH, 1040.0);
        Need table = new Comparison(body, GarmentKind.SKIRT, Optional.of(row), flat, Map.of(), USUAL)
                .needs()
                .get(0);
        assertThat(table.method()).isEqualTo(Method.TABLE);
        assertThat(table.needMm()).isCloseTo(35, within(1e-9));
        assertThat(table.easeMm()).isCloseTo(75, within(1e-9));
        Need paper = new Comparison(
                        body, GarmentKind.SKIRT, Optional.of(row), flat, Map.of(), USUAL.withMethod(Method.FLAT))
                .needs()
                .get(0);
        // 2 1/2 in of usual ease at the hip of a skirt: 1000 + 63.5 - 1040.
        assertThat(paper.method()).isEqualTo(Method.FLAT);
        assertThat(paper.needMm()).isCloseTo(23.5, within(1e-9));
    }

    @Test
    void herOwnEaseGoesBeforeThePatternsAndThePatternsBeforeTheUsualOne() {
        Body body = body(Measure.HIP_GIRTH, 1000);
        Map<Measure, Double> flat = Map.of(Measure.HIP_GIRTH, 1040.0);
        Map<Measure, Double> stated = Map.of(Measure.HIP_GIRTH, 80.0);
        FitChoices own = USUAL.withEase(Map.of(Measure.HIP_GIRTH, 50.0));
        assertThat(ease(body, flat, stated, own)).isEqualTo(50);
        assertThat(ease(body, flat, stated, USUAL)).isEqualTo(80);
        assertThat(ease(body, flat, Map.of(), USUAL)).isCloseTo(2.5 * IN, within(1e-9));
    }

    private static double ease(Body body, Map<Measure, Double> flat, Map<Measure, Double> stated, FitChoices choices) {
        return new Comparison(body, GarmentKind.SKIRT, Optional.empty(), flat, stated, choices)
                .needs()
                .get(0)
                .easeMm();
    }

    @Test
    void aSmallNeedShowsTheMeasuringErrorBesideIt() {
        // ISO 20685-1:2018: 9 mm on large girths, more than the finer rule leaves.
        Need need = byTable(GarmentKind.BODICE, Measure.BUST_GIRTH, 7, 150, USUAL.withRule(Rule.FINE, 1));
        assertThat(need.measuringErrorMm()).isEqualTo(9);
    }

    @Test
    void aChosenTrouserLengthDecidesOverTheInsideLegUnlessSheDecidedAboutTheLeg() {
        Body body = body(Measure.INSIDE_LEG_LENGTH, 760).with(Reading.taped(Measure.TROUSER_LENGTH, 980));
        Map<Measure, Double> flat = Map.of(Measure.INSIDE_LEG_LENGTH, 800.0, Measure.TROUSER_LENGTH, 1050.0);
        assertThat(verdicts(body, flat, USUAL))
                .containsEntry(Measure.TROUSER_LENGTH, -70.0)
                .containsEntry(Measure.INSIDE_LEG_LENGTH, 0.0);
        FitChoices leg = USUAL.withOverrules(Map.of(Measure.INSIDE_LEG_LENGTH, new Overrule.Alter()));
        assertThat(verdicts(body, flat, leg))
                .containsEntry(Measure.TROUSER_LENGTH, 0.0)
                .containsEntry(Measure.INSIDE_LEG_LENGTH, -40.0);
    }

    private static Map<Measure, Double> verdicts(Body body, Map<Measure, Double> flat, FitChoices choices) {
        List<Need> needs =
                new Comparison(body, GarmentKind.TROUSERS, Optional.empty(), flat, Map.of(), choices).needs();
        return needs.stream()
                .collect(Collectors.toMap(Need::measure, need -> need.decision().amountMm()));
    }
}
