package trueseam.fitting.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trueseam.fitting.standing.Evidence.Counts;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen.Settled;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeRow;

/**
 * Examples in round millimetres. The draft figures are the misses' chart of trade.md 1.2 in the lines that matter: back waist length of
 * size 12 is 16 1/4 in = 412.75 mm, of 14 16 1/2 in = 419.1 mm, of 16 16 3/4 in = 425.45 mm.
 */
class StandingTest {

    private static final Measure LENGTH = Measure.BACK_WAIST_LENGTH;
    private static final Measure WAIST = Measure.WAIST_GIRTH;

    private static Standing standing(Earlier... fits) {
        return Standing.of(Stream.of(fits).map(Earlier::fit).toList(), Optional.empty());
    }

    private static Proposal length(Earlier... fits) {
        return standing(fits).of(LENGTH).orElseThrow();
    }

    private static Earlier length(String size, int monthsAgo, double drawnForMm, double changedMm, Settled settled) {
        return Earlier.bodice(size, monthsAgo).with(LENGTH, 400, drawnForMm, changedMm, settled);
    }

    @Test
    void anAmountOfOneSizeBecomesTheAmountOfAnother() {
        // Both patterns ended at 400 mm of back waist; on size 16 that is 425.45 - 400 less.
        Proposal proposal = length(
                length("12", 9, 412.75, -12.75, Settled.ALTERED), length("14", 3, 419.1, -19.1, Settled.ALTERED));
        assertThat(proposal.weight()).isEqualTo(Weight.AGREED);
        assertThat(proposal.mm().orElseThrow()).isCloseTo(400, within(1e-9));
        assertThat(proposal.amountOn(new SizeRow("16", Map.of(LENGTH, 425.45))).orElseThrow())
                .isCloseTo(-25.45, within(1e-9));
        assertThat(proposal.amountOnTheLatest().orElseThrow()).isCloseTo(-19.1, within(1e-9));
        assertThat(proposal.amountOn(new SizeRow("16", Map.of(WAIST, 700.0)))).isEmpty();
    }

    @Test
    void equalAmountsInSizesThatAreDrawnForFiguresFarApartDoNotAgree() {
        // 10 mm off both is 402.75 and 415.45: 12.7 mm apart, and the tape may err by 5.
        Proposal proposal =
                length(length("12", 9, 412.75, -10, Settled.DECIDED), length("16", 3, 425.45, -10, Settled.DECIDED));
        assertThat(proposal.weight()).isEqualTo(Weight.CONTRADICTED);
        assertThat(proposal.mm()).isEmpty();
        assertThat(proposal.evidence(Counts.AGAINST)).hasSize(2);
    }

    @Test
    void theMeasuringErrorIsWhereAgreementEnds() {
        // ISO 20685, segment lengths: 5 mm.
        assertThat(length(length("12", 9, 410, -10, Settled.DECIDED), length("14", 3, 415, -10, Settled.DECIDED))
                        .weight())
                .isEqualTo(Weight.AGREED);
        assertThat(length(length("12", 9, 410, -10, Settled.DECIDED), length("14", 3, 415.1, -10, Settled.DECIDED))
                        .weight())
                .isEqualTo(Weight.CONTRADICTED);
    }

    @Test
    void whatContradictsIsShownAndNotAveragedIn() {
        Proposal proposal = length(
                length("12", 9, 412, -12, Settled.DECIDED),
                length("14", 6, 419, -17, Settled.DECIDED),
                length("16", 3, 425, +10, Settled.DECIDED));
        assertThat(proposal.weight()).isEqualTo(Weight.AGREED);
        assertThat(proposal.mm().orElseThrow()).isCloseTo(401, within(1e-9));
        assertThat(proposal.spreadMm()).isCloseTo(2, within(1e-9));
        assertThat(proposal.evidence(Counts.AGAINST)).singleElement().satisfies(one -> assertThat(one.mm())
                .isEqualTo(435));
    }

    @Test
    void onePatternAloneIsAWeakerProposal() {
        Proposal proposal = length(length("12", 9, 412, -12, Settled.ALTERED));
        assertThat(proposal.weight()).isEqualTo(Weight.ONE_PATTERN);
        assertThat(proposal.mm().orElseThrow()).isEqualTo(400);
    }

    @Test
    void aWornPatternIsNotOutvotedByTwoThatNeverWere() {
        Proposal proposal = length(
                length("12", 9, 412, -12, Settled.ALTERED),
                length("14", 6, 419, -19, Settled.ALTERED),
                length("16", 3, 425, +10, Settled.DECIDED).andWorn());
        assertThat(proposal.weight()).isEqualTo(Weight.CONTRADICTED);
    }

    @Test
    void whatWasTakenFromEarlierPatternsIsNoEvidenceUntilItWasWorn() {
        Earlier first = length("12", 9, 412, -12, Settled.DECIDED);
        Earlier taken = length("14", 6, 419, -19, Settled.STANDING);
        assertThat(length(first, taken).weight()).isEqualTo(Weight.ONE_PATTERN);
        assertThat(length(first, taken).evidence(Counts.HEARSAY)).hasSize(1);
        assertThat(length(first, taken.andWorn()).weight()).isEqualTo(Weight.AGREED);
    }

    @Test
    void ofSeveralFitsOfOnePatternTheLatestCountsAndBeforeItTheWornOne() {
        Earlier first = length("12", 9, 412, -12, Settled.DECIDED);
        Earlier again = length("12", 8, 412, -30, Settled.DECIDED);
        assertThat(length(first, again).mm().orElseThrow()).isEqualTo(382);
        assertThat(length(first.andWorn(), again).mm().orElseThrow()).isEqualTo(400);
    }

    @Test
    void twoFitsOfOnePatternOnOneDayThatDifferCountForNothing() {
        Proposal proposal =
                length(length("12", 9, 412, -12, Settled.DECIDED), length("12", 9, 412, -30, Settled.DECIDED));
        assertThat(proposal.weight()).isEqualTo(Weight.UNCOUNTED);
        assertThat(proposal.evidence(Counts.UNDECIDED)).hasSize(2);
    }

    @Test
    void whatARuleLeftAloneBearsOutAProposalThatDiffersByNoMoreThanTheRuleLeaves() {
        Earlier altered = length("12", 9, 412, -22, Settled.DECIDED);
        assertThat(length(altered, length("8", 3, 400, 0, Settled.LEFT)).evidence(Counts.BEARS_OUT))
                .hasSize(1);
        // 410 left as it was is 20 mm from 390, more than the half inch that the rule leaves.
        assertThat(length(altered, length("10", 3, 410, 0, Settled.LEFT)).weight())
                .isEqualTo(Weight.CONTRADICTED);
        assertThat(length(length("8", 3, 400, 0, Settled.LEFT), length("10", 3, 406, 0, Settled.LEFT))
                        .weight())
                .isEqualTo(Weight.LEFT_ALONE);
    }

    @Test
    void whenTheBodyHasChangedTheEvidenceMovesAlongAndAChangeWithinTheTapesErrorIsNone() {
        // She always takes 10 mm more in the waist than the tape says.
        List<EarlierFit> fits = Stream.of(
                        Earlier.bodice("12", 9).with(WAIST, 700, 673, 37, Settled.DECIDED),
                        Earlier.bodice("14", 6).with(WAIST, 702, 711, 1, Settled.DECIDED))
                .map(Earlier::fit)
                .toList();
        Body same = Body.named("Ann").with(Reading.taped(WAIST, 706));
        Body larger = Body.named("Ann").with(Reading.taped(WAIST, 740));
        assertThat(Standing.of(fits, Optional.of(same))
                        .of(WAIST)
                        .orElseThrow()
                        .mm()
                        .orElseThrow())
                .isEqualTo(711);
        assertThat(Standing.of(fits, Optional.of(larger))
                        .of(WAIST)
                        .orElseThrow()
                        .mm()
                        .orElseThrow())
                .isEqualTo(750);
    }

    @Test
    void anAlterationByNameKeepsItsAmountAndEachSideIsItsOwn() {
        Standing standing = standing(
                Earlier.bodice("12", 9).named("sway-back", 10, Side.BOTH).named("square shoulder", 12, Side.LEFT),
                Earlier.bodice("14", 3).named("sway-back", 12, Side.BOTH).named("square shoulder", 6, Side.RIGHT));
        assertThat(standing.named("sway-back")).singleElement().satisfies(one -> {
            assertThat(one.weight()).isEqualTo(Weight.AGREED);
            assertThat(one.mm().orElseThrow()).isEqualTo(11);
        });
        assertThat(standing.named("square shoulder")).hasSize(2).allSatisfy(one -> assertThat(one.weight())
                .isEqualTo(Weight.ONE_PATTERN));
        assertThat(standing.forGarment(GarmentKind.TROUSERS).proposals()).isEmpty();
    }

    @Test
    void whatWasPinnedOnTopOfAnAlterationByNameIsOneAmountWithIt() {
        assertThat(standing(Earlier.bodice("12", 9)
                                .named("sway-back", 6, Side.BOTH)
                                .named("sway-back", 4, Side.BOTH))
                        .named("sway-back"))
                .singleElement()
                .satisfies(one -> assertThat(one.mm().orElseThrow()).isEqualTo(10));
    }

    @Test
    void whatAnAlterationDidToAMeasureOfTheChartIsNotCountedASecondTimeByItsName() {
        Standing standing = standing(Earlier.bodice("12", 9)
                .with(Measure.ACROSS_BACK_WIDTH, 360, 355, 12, Settled.LEFT)
                .named("across back", 12, Side.BOTH));
        assertThat(standing.named("across back")).isEmpty();
        // The rule left the difference, she did not: it is an amount and no mere bound.
        assertThat(standing.of(Measure.ACROSS_BACK_WIDTH).orElseThrow().weight())
                .isEqualTo(Weight.ONE_PATTERN);
        assertThat(standing(Earlier.bodice("12", 9).named("across back", 12, Side.BOTH))
                        .named("across back"))
                .hasSize(1);
    }

    @Test
    void finishedLengthsAreChosenAnewAndSeveralPeopleAreRefused() {
        Earlier skirt = Earlier.bodice("12", 9).with(Measure.SKIRT_LENGTH, 600, 580, 20, Settled.ALTERED);
        assertThat(standing(skirt).of(Measure.SKIRT_LENGTH).orElseThrow().weight())
                .isEqualTo(Weight.CHOSEN_LENGTH);
        assertThatThrownBy(() -> Standing.of(
                        List.of(skirt.fit()), Optional.of(Body.named("Bea").with(Reading.taped(WAIST, 700)))))
                .isInstanceOf(EvidenceException.class)
                .hasMessageContaining("Ann, Bea");
        assertThatThrownBy(() -> Standing.of(List.of(), Optional.empty())).isInstanceOf(EvidenceException.class);
    }

    @Test
    void theWordsTellPatternsAmountsAgeAndWhatSaysOtherwise() {
        StandingWords words = new StandingWords(LengthFormat.millimetres(), Earlier.TODAY);
        Proposal proposal = length(
                length("12", 14, 412, -12, Settled.DECIDED).andWorn(),
                length("14", 7, 419, -17, Settled.DECIDED),
                length("16", 1, 425, +10, Settled.DECIDED));
        assertThat(words.evidence(proposal))
                .isEqualTo("2 patterns agree within 2 mm (misses 12: -12 mm, worn, 14 months ago; misses 14: -17 mm,"
                        + " 7 months ago); not counted in, for it says otherwise: misses 16: +10 mm, 1 month ago");
        assertThat(words.evidence(length(length("12", -2, 412, -12, Settled.DECIDED))))
                .isEqualTo("misses 12: -12 mm, dated after today");
        assertThat(words.age(proposal)).isEqualTo("7 to 14 months");
        assertThat(words.isOld(proposal)).isTrue();
    }
}
