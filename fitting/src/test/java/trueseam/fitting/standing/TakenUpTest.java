package trueseam.fitting.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Drafted;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Request;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.MeasureThen.Settled;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.intake.size.SizeTables;

/** What earlier patterns agree on, taken into the fit of a misses' 14 bodice (waist 28 in = 711.2 mm, misses' chart, trade.md 1.2). */
class TakenUpTest {

    private static final Measure WAIST = Measure.WAIST_GIRTH;
    private static final Pattern BODICE = Drafted.shell(GarmentKind.BODICE, "14");
    private static final SizeRow FOURTEEN = SizeTables.named("misses").row("14");
    private static final StandingWords WORDS = new StandingWords(LengthFormat.millimetres(), Earlier.TODAY);

    private static Body waist(double mm) {
        return Body.named("Ann").with(Reading.taped(WAIST, mm));
    }

    private static Earlier waist(String size, double drawnForMm, double changedMm) {
        return Earlier.bodice(size, 3).with(WAIST, 731.2, drawnForMm, changedMm, Settled.DECIDED);
    }

    private static TakenUp taken(Body body, FitChoices choices, Earlier... fits) {
        Standing standing = Standing.of(Stream.of(fits).map(Earlier::fit).toList(), Optional.of(body));
        List<Need> chart = Fitting.chart(BODICE, body, Optional.of(FOURTEEN), Optional.empty(), choices);
        return TakenUp.of(standing, chart, BODICE, choices, WORDS);
    }

    private static FitResult fit(Body body, TakenUp taken) {
        return Fitting.fit(BODICE, body, Optional.of(FOURTEEN), taken.choices()).saying(taken.findings());
    }

    private static Need need(FitResult fit) {
        return fit.needs().stream()
                .filter(n -> n.measure() == WAIST)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theAmountTakesThePlaceOfTheChartsAndIsNeverAddedToIt() {
        // The tape asks for 20 mm. Both earlier patterns ended at 751.2 mm, 20 more than the tape: 40 here, not 60.
        Body body = waist(731.2);
        TakenUp taken = taken(body, Drafted.USUAL, waist("12", 673.1, 78.1), waist("16", 762, -10.8));
        FitResult fit = fit(body, taken);
        assertThat(need(fit).decision().amountMm()).isCloseTo(40, within(1e-9));
        assertThat(need(fit).decision().reason())
                .startsWith("Standing: +40 mm instead of the +20 mm by the tape")
                .contains("misses 12: +78 mm")
                .contains("misses 16: -11 mm");
        assertThat(Drafted.mm(fit.worked().altered(), WAIST) - Drafted.mm(BODICE, WAIST))
                .isCloseTo(40, within(0.1));
        assertThat(fit.report().holds()).isTrue();
    }

    @Test
    void whereTheChartComesToTheSameNothingIsAdded() {
        Body body = waist(731.2);
        TakenUp taken = taken(body, Drafted.USUAL, waist("12", 673.1, 60), waist("16", 762, -29));
        FitResult fit = fit(body, taken);
        assertThat(need(fit).decision().amountMm()).isCloseTo(20, within(1e-9));
        assertThat(need(fit).decision().overruled()).isFalse();
        assertThat(need(fit).decision().reason()).contains("Standing: the same");
    }

    @Test
    void aSmallDifferenceIsTakenUpOnlyIfSheDecidedItHerself() {
        // 11 mm too large, which the half-inch rule leaves.
        Body body = waist(700.2);
        assertThat(need(fit(body, taken(body, Drafted.USUAL, twice(Settled.DECIDED))))
                        .decision()
                        .amountMm())
                .isCloseTo(-11, within(1e-9));
        assertThat(need(fit(body, taken(body, Drafted.USUAL, twice(Settled.ALTERED))))
                        .decision()
                        .verdict())
                .isEqualTo(Verdict.LEAVE);
    }

    /** Two patterns that ended at just what the tape reads. */
    private static Earlier[] twice(Settled settled) {
        return new Earlier[] {
            Earlier.bodice("12", 3).with(WAIST, 700.2, 673.1, 27.1, settled),
            Earlier.bodice("16", 3).with(WAIST, 700.2, 762, -61.8, settled)
        };
    }

    @Test
    void onePatternAloneAndPatternsThatContradictAreToldAndNotTaken() {
        Body body = waist(731.2);
        TakenUp one = taken(body, Drafted.USUAL, waist("12", 673.1, 98.1));
        assertThat(one.choices()).isEqualTo(Drafted.USUAL);
        assertThat(one.findings()).singleElement().satisfies(f -> assertThat(f.sentence())
                .contains("one earlier pattern would ask for +60 mm here")
                .contains("not taken"));
        TakenUp two = taken(body, Drafted.USUAL, waist("12", 673.1, 98.1), waist("16", 762, -60));
        assertThat(two.choices()).isEqualTo(Drafted.USUAL);
        assertThat(two.findings()).singleElement().satisfies(f -> assertThat(f.sentence())
                .contains("contradict each other"));
    }

    @Test
    void herOwnDecisionGoesBeforeEarlierPatterns() {
        Body body = waist(731.2);
        FitChoices leave = Drafted.USUAL.withOverrules(Map.of(WAIST, new Overrule.Leave()));
        TakenUp taken = taken(body, leave, waist("12", 673.1, 78.1), waist("16", 762, -10.8));
        assertThat(taken.choices()).isEqualTo(leave);
    }

    @Test
    void whatPatternsAgreeToLeaveAloneIsLeft() {
        // The tape asks for 20 mm; twice she ended at the drafted 711 mm and was content.
        Body body = waist(731.2);
        FitResult fit = fit(body, taken(body, Drafted.USUAL, waist("12", 673.1, 38), waist("16", 762, -52)));
        assertThat(need(fit).decision().verdict()).isEqualTo(Verdict.LEAVE);
        assertThat(need(fit).decision().reason()).startsWith("Standing: left alone instead of the +20 mm");
    }

    @Test
    void anAmountThatTheAlterationIsNotTrustedWithIsLeftForTheTrialGarmentAndSpoilsNothing() {
        // Twice she ended 80 mm above the tape across the back, more than any pivot there is trusted with.
        Measure back = Measure.ACROSS_BACK_WIDTH;
        Body body = waist(731.2).with(Reading.taped(back, 350));
        TakenUp taken = taken(
                body,
                Drafted.USUAL,
                Earlier.bodice("12", 3).with(back, 350, 340, 90, Settled.DECIDED),
                Earlier.bodice("16", 2).with(back, 350, 360, 70, Settled.DECIDED));
        assertThat(taken.choices().isStanding(back)).isTrue();
        FitResult fit = fit(body, taken);
        assertThat(fit.report().holds()).isTrue();
        assertThat(fit.needs())
                .filteredOn(n -> n.measure() == back)
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.decision().verdict()).isEqualTo(Verdict.TRY_ON);
                    assertThat(n.decision().reason()).contains("Standing:").contains("Left for the trial garment");
                });
        assertThat(need(fit).decision().amountMm()).isCloseTo(20, within(1e-9));
    }

    @Test
    void anAlterationByNameIsAskedForOnceAndOnItsOwnSide() {
        Body body = waist(711.2);
        Earlier twelve =
                Earlier.bodice("12", 3).named("sway-back", 10, Side.BOTH).named("square shoulder", 10, Side.LEFT);
        Earlier sixteen =
                Earlier.bodice("16", 2).named("sway-back", 11, Side.BOTH).named("square shoulder", 12, Side.LEFT);
        TakenUp taken = taken(body, Drafted.USUAL, twelve, sixteen);
        assertThat(taken.requests())
                .extracting(r -> r.entry().name())
                .containsExactlyInAnyOrder("sway-back", "square shoulder");
        assertThat(taken.requests())
                .filteredOn(r -> r.entry().name().equals("square shoulder"))
                .extracting(Request::side)
                .containsExactly(Optional.of(Side.LEFT));
        FitResult fit = fit(body, taken);
        assertThat(fit.report().holds()).isTrue();
        assertThat(fit.findings())
                .extracting(Finding::sentence)
                .anyMatch(s -> s.startsWith("Standing: +11 mm is done"));
        // She asks for the same herself: hers is done, and once.
        TakenUp own = taken(body, Drafted.USUAL.withRequests(taken.requests()), twelve, sixteen);
        assertThat(own.requests()).isEmpty();
    }
}
