package trueseam.fitting.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.plan.Change;
import trueseam.fitting.plan.Sharing;
import trueseam.garment.body.Body;
import trueseam.garment.body.IdealFigure;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.DesignBand;
import trueseam.garment.ease.EaseShares;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.intake.size.SizeTables;

/**
 * The worked examples of the trade facts, section 6, that are about the need and its shares. Numbers of the examples stand in the
 * names' comments; P: the numbers are in the source; R: the rule is published, the numbers are ours; D: the rule is common
 * practice. All in inches unless noted.
 */
class WorkedExamplesTest {

    private static final double IN = 25.4;
    private static final FitChoices USUAL = FitChoices.usual(LengthFormat.inches(8));

    private static Body body(Measure measure, double mm) {
        return Body.named("example").with(Reading.taped(measure, mm));
    }

    private static Need need(GarmentKind kind, Body body, Measure measure, double flatMm, FitChoices choices) {
        return new Comparison(
                        body,
                        kind,
                        Optional.empty(),
                        Map.of(measure, flatMm),
                        Map.of(),
                        choices.withMethod(Method.FLAT))
                .needs().stream()
                        .filter(n -> n.measure() == measure)
                        .findFirst()
                        .orElseThrow();
    }

    private static Change shared(Need need, int sideEdges) {
        return Sharing.changes(List.of(need), sideEdges, GarmentKind.BODICE).get(0);
    }

    @Test
    void aWaistOneInchLargerThanThePatternsBodyIsAQuarterInchAtEachOfFourEdges() {
        // Example 1, P for the total: Clothing: Fashion, Fabrics and Construction, sewing handbook section on adjusting
        // a
        // pattern; the four edges are common practice.
        SizeRow size = new SizeRow("14", Map.of(Measure.WAIST_GIRTH, 28 * IN));
        Need need = new Comparison(
                        body(Measure.WAIST_GIRTH, 29 * IN),
                        GarmentKind.SKIRT,
                        Optional.of(size),
                        Map.of(),
                        Map.of(),
                        USUAL)
                .needs()
                .get(0);
        assertThat(need.needMm()).isCloseTo(1 * IN, within(1e-9));
        Change change = shared(need, 4);
        assertThat(change.totalMm()).isCloseTo(1 * IN, within(1e-9));
        assertThat(change.edges()).isEqualTo(4);
        assertThat(change.perEdgeMm()).isCloseTo(IN / 4, within(1e-9));
    }

    @Test
    void aBustOfThirtyNineInSizeFourteenNeedsThreeInches() {
        // Example 3, R: Principles of Pattern Alteration, Texas Cooperative Extension E-372, 2006, with the misses'
        // chart:
        // high bust 36 is size 14, whose bust is 36. (That the fronts alone should take it is the full-bust
        // alteration.)
        SizeRow size = SizeTables.named("misses").row("14");
        Need need = new Comparison(
                        body(Measure.BUST_GIRTH, 39 * IN),
                        GarmentKind.BODICE,
                        Optional.of(size),
                        Map.of(),
                        Map.of(),
                        USUAL)
                .needs()
                .get(0);
        assertThat(need.needMm()).isCloseTo(3 * IN, within(1e-9));
        assertThat(need.decision().verdict()).isEqualTo(Verdict.ALTER);
    }

    @ParameterizedTest
    @CsvSource({"35, 10.5", "37, 10.75", "39, 11"})
    void theCrotchDepthOfThePatternIsTheBodysAndAnEaseThatGrowsWithTheHip(double hipIn, double wantedIn) {
        // Example 16, R: Measurements for Fitting Pants, NMSU Cooperative Extension, Guide C-209: bands published, a
        // seated
        // depth of 10 chosen here.
        Body body = body(Measure.BODY_RISE, 10 * IN).with(Reading.taped(Measure.HIP_GIRTH, hipIn * IN));
        Need need = need(GarmentKind.TROUSERS, body, Measure.BODY_RISE, 10 * IN, USUAL);
        assertThat(10 * IN + need.needMm()).isCloseTo(wantedIn * IN, within(1e-9));
    }

    @Test
    void aWaistOf72CentimetresInAPatternOf80HasEightCentimetresOfEase() {
        // Example 17, P: a web note on ease (2011 to 2019).
        SizeRow size = new SizeRow("38", Map.of(Measure.WAIST_GIRTH, 720.0));
        Need need = new Comparison(
                        body(Measure.WAIST_GIRTH, 720),
                        GarmentKind.SKIRT,
                        Optional.of(size),
                        Map.of(Measure.WAIST_GIRTH, 800.0),
                        Map.of(),
                        USUAL)
                .needs()
                .get(0);
        assertThat(need.easeMm()).isCloseTo(80, within(1e-9));
        assertThat(need.needMm()).isZero();
    }

    @Test
    void aFinishedBustOf41AndAHalfInSizeTwelveHasSevenAndAHalfInchesAndIsLoose() {
        // Example 18, P: a web note on finished measures; the band is the pattern-envelope convention, common practice.
        SizeRow size = SizeTables.named("misses").row("12");
        Need need = new Comparison(
                        body(Measure.BUST_GIRTH, 34 * IN),
                        GarmentKind.BODICE,
                        Optional.of(size),
                        Map.of(Measure.BUST_GIRTH, 41.5 * IN),
                        Map.of(),
                        USUAL)
                .needs()
                .get(0);
        assertThat(need.easeMm()).isCloseTo(7.5 * IN, within(1e-9));
        assertThat(DesignBand.of(DesignBand.Style.DRESS, need.easeMm()).name()).isEqualTo("loose");
    }

    @ParameterizedTest(name = "example {0}: {2} {3}, flat {5}")
    @CsvSource({
        // Example, garment, measure, body, ease chosen (empty: the program's usual), flat, need, edges, each. D, common
        // practice.
        "24, BODICE,   BUST_GIRTH,      38,   3,   39,    2,     4, 0.5",
        "25, SKIRT,    HIP_GIRTH,       42,   2.5, 41,    3.5,   4, 0.875",
        "26, SKIRT,    WAIST_GIRTH,     30,   1,   29,    2,     4, 0.5",
        "27, BODICE,   UPPER_ARM_GIRTH, 13,   2,   14.25, 0.75,  2, 0.375",
        "37, BODICE,   BUST_GIRTH,      34,   3,   39.5,  -2.5,  4, -0.625",
    })
    void aNeedIsBodyAndEaseLessThePatternSharedOverTheCutEdges(
            int example,
            GarmentKind kind,
            Measure measure,
            double bodyIn,
            double easeIn,
            double flatIn,
            double needIn,
            int edges,
            double eachIn) {
        Need need = need(kind, body(measure, bodyIn * IN), measure, flatIn * IN, USUAL);
        assertThat(need.easeMm()).as("the program's usual ease").isCloseTo(easeIn * IN, within(1e-9));
        assertThat(need.needMm()).isCloseTo(needIn * IN, within(1e-9));
        Change change = shared(need, 4);
        assertThat(change.edges()).isEqualTo(edges);
        assertThat(change.perEdgeMm()).isCloseTo(eachIn * IN, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // Examples 25 and 37, D: over half an inch an edge, use the next size line or spread inside. Example 24 is just
        // half
        // an inch.
        "BUST_GIRTH, 38, 39, 0",
        "BUST_GIRTH, 34, 39.5, 1",
        "WAIST_GIRTH, 30, 26, 1"
    })
    void moreThanHalfAnInchAtAnEdgeIsWarnedOfWithTheAlternative(
            Measure measure, double bodyIn, double flatIn, int warnings) {
        Need need = need(GarmentKind.BODICE, body(measure, bodyIn * IN), measure, flatIn * IN, USUAL);
        var findings = Sharing.warnings(List.of(shared(need, 4)), LengthFormat.inches(8));
        assertThat(findings).hasSize(warnings).allSatisfy(f -> assertThat(f.sentence())
                .contains("next size line")
                .contains("opening the piece inside"));
    }

    @Test
    void aThighLacksOneInchPerLeg() {
        // Example 28, D. (How it is shared over the edges of a leg is held by LowerHalfExamplesTest.)
        Need need =
                need(GarmentKind.TROUSERS, body(Measure.THIGH_GIRTH, 24 * IN), Measure.THIGH_GIRTH, 24.5 * IN, USUAL);
        assertThat(need.easeMm()).isCloseTo(1.5 * IN, within(1e-9));
        assertThat(need.needMm()).isCloseTo(1 * IN, within(1e-9));
        assertThat(need.decision().verdict()).isEqualTo(Verdict.ALTER);
    }

    @Test
    void aCrotchDepthOfTenAndAHalfWithAHipOfFortyNeedsThreeQuartersOfAnInch() {
        // Example 29, D, the ease from Guide C-209: hip over 38, 1 in. (What it does to the crotch seam is held by
        // WorkedExamplesOnPaperTest.)
        Body body = body(Measure.BODY_RISE, 10.5 * IN).with(Reading.taped(Measure.HIP_GIRTH, 40 * IN));
        Need need = need(GarmentKind.TROUSERS, body, Measure.BODY_RISE, 10.75 * IN, USUAL);
        assertThat(need.needMm()).isCloseTo(0.75 * IN, within(1e-9));
        assertThat(shared(need, 4).perEdgeMm())
                .as("the full amount on every piece")
                .isCloseTo(0.75 * IN, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"FRONT_CROTCH_LENGTH, 13, 13.25, 0.5, 13.75", "BACK_CROTCH_LENGTH, 15, 15.5, 0.25, 15.75"})
    void frontAndBackCrotchLengthAreNeededByTheirOwnShares(
            Measure measure, double bodyIn, double flatIn, double needIn, double targetIn) {
        // Example 30, D: ease 1 1/2 in all, 3/4 each.
        Need need = need(
                GarmentKind.TROUSERS,
                body(measure, bodyIn * IN),
                measure,
                flatIn * IN,
                USUAL.withOverrules(Map.of(measure, new Overrule.Alter())));
        assertThat(need.easeMm()).isCloseTo(0.75 * IN, within(1e-9));
        assertThat(need.needMm()).isCloseTo(needIn * IN, within(1e-9));
        assertThat(need.targetMm().orElseThrow()).isCloseTo(targetIn * IN, within(1e-9));
        assertThat(shared(need, 4).perEdgeMm())
                .as("left and right get the same full amount")
                .isEqualTo(need.needMm());
    }

    @Test
    void aBackWaistOfSixteenInAPatternOfSixteenAndThreeQuartersIsHalfAnInchTooLong() {
        // Example 31, D.
        Need need = need(
                GarmentKind.BODICE,
                body(Measure.BACK_WAIST_LENGTH, 16 * IN),
                Measure.BACK_WAIST_LENGTH,
                16.75 * IN,
                USUAL.withRule(Rule.FINE, 1));
        assertThat(need.easeMm()).isCloseTo(0.25 * IN, within(1e-9));
        assertThat(need.needMm()).isCloseTo(-0.5 * IN, within(1e-9));
        assertThat(shared(need, 4).perEdgeMm()).isCloseTo(-0.5 * IN, within(1e-9));
    }

    @Test
    void anArmOfTwentyThreeInASleeveOfTwentyTwoAndAHalfNeedsHalfAnInch() {
        // Example 32, D.
        Need need = need(
                GarmentKind.BODICE,
                body(Measure.ARM_LENGTH, 23 * IN),
                Measure.ARM_LENGTH,
                22.5 * IN,
                USUAL.withRule(Rule.FINE, 1));
        assertThat(need.needMm()).isCloseTo(0.5 * IN, within(1e-9));
        assertThat(need.decision().verdict()).isEqualTo(Verdict.ALTER);
    }

    @ParameterizedTest
    @CsvSource({"HALF_INCH", "FINE"})
    void anEighthOfAnInchAtTheBustIsLeft(Rule rule) {
        // Example 36, D, and section 10: 1/32 at an edge is no alteration.
        Need need = need(
                GarmentKind.BODICE,
                body(Measure.BUST_GIRTH, 38 * IN),
                Measure.BUST_GIRTH,
                (41 - 0.125) * IN,
                USUAL.withRule(rule, 1));
        assertThat(need.needMm()).isCloseTo(0.125 * IN, within(1e-9));
        assertThat(need.decision().verdict()).isEqualTo(Verdict.LEAVE);
        assertThat(Sharing.changes(List.of(need), 4, GarmentKind.BODICE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12, 0.25", "8, 0.375"})
    void aHipNeedOfThreeOnSixPanelsIsAQuarterInchOnTwelveEdgesOrThreeEighthsOnEight(int edges, double eachIn) {
        // Example 38, D: six seams have twelve edges; with the centre panels left alone eight.
        Need need = need(GarmentKind.SKIRT, body(Measure.HIP_GIRTH, 40.5 * IN), Measure.HIP_GIRTH, 40 * IN, USUAL);
        assertThat(need.needMm()).isCloseTo(3 * IN, within(1e-9));
        assertThat(shared(need, edges).perEdgeMm()).isCloseTo(eachIn * IN, within(1e-9));
    }

    @Test
    void aBustEaseOfEightCentimetresIsSharedAFifthBehindFourFifthsAtTheArmholeAndNoneInFront() {
        // Example 20, P: a drafting-school lesson on a dress block (web:easeshare): 4 on the half, 0.8, 3.2 and 0.
        List<Double> half = EaseShares.parse("20/80/0").onTheHalf(80);
        assertThat(half.get(0)).isCloseTo(8, within(1e-9));
        assertThat(half.get(1)).isCloseTo(32, within(1e-9));
        assertThat(half.get(2)).isCloseTo(0, within(1e-9));
        assertThat(EaseShares.parse("20/80/0")).isEqualTo(EaseShares.DRAFTING_SCHOOL);
    }

    @Test
    void aBodiceDraftedWithTheseSharesHasThemOnThePaper() {
        // Example 20 again, measured on the flat pattern of a draft: body 36 in bust, ease 8 cm; across back 1.6 cm
        // more than the
        // body, across front as the body, all round 8 cm more.
        DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), "14");
        DraftEase ease = DraftEase.fitted()
                .with(Measure.BUST_GIRTH, 80)
                .divided(EaseShares.DRAFTING_SCHOOL, GarmentKind.BODICE, figure);
        Pattern bodice = Shells.bodice(figure, ease, Allowances.inches());
        assertThat(flat(bodice, Measure.BUST_GIRTH) - figure.mm(Measure.BUST_GIRTH))
                .isCloseTo(80, within(0.01));
        assertThat(flat(bodice, Measure.ACROSS_BACK_WIDTH) - figure.mm(Measure.ACROSS_BACK_WIDTH))
                .isCloseTo(16, within(0.01));
        assertThat(flat(bodice, Measure.ACROSS_FRONT_WIDTH) - figure.mm(Measure.ACROSS_FRONT_WIDTH))
                .isCloseTo(0, within(0.01));
    }

    private static double flat(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }

    @Test
    void aHeightOfSixtyThreeAndAHalfIsDrawnWithAHeadOfEightAndAHalf() {
        // Example 21, P: Pattern Selection and Alteration, Extension Circular 306 (Washington), 1943: 63.5 / 7.5 =
        // 8.47.
        IdealFigure ideal = new IdealFigure(63.5 * IN);
        assertThat(ideal.headMm() / IN).isCloseTo(8.47, within(0.005));
        // The same: half the height is at the hip line, the armpits halve the upper half, the knees the lower.
        assertThat(ideal.hipMm() / IN).isCloseTo(31.75, within(1e-9));
        assertThat(ideal.armpitMm() - ideal.hipMm()).isCloseTo(ideal.statureMm() - ideal.armpitMm(), within(1e-9));
        assertThat(2 * ideal.kneeMm()).isCloseTo(ideal.hipMm(), within(1e-9));
    }
}
