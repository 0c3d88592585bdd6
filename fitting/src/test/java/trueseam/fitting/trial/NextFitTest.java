package trueseam.fitting.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trueseam.fitting.trial.PinnedTest.pinned;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Drafted;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

class NextFitTest {

    private static final double IN = 25.4;

    private static FitResult altered(GarmentKind kind, Map<Measure, Double> mm) {
        FitResult fit = Drafted.altered(Drafted.shell(kind, "14"), mm, Drafted.USUAL);
        assertThat(fit.report().failures()).isEmpty();
        return fit;
    }

    private static FitResult after(FitResult before, Pinned... findings) {
        FitResult next = NextFit.after(before, List.of(new Sitting("first", List.of(findings))));
        assertThat(next.report().failures()).isEmpty();
        return next;
    }

    private static double mm(FitResult fit, Measure measure) {
        return Drafted.mm(fit.worked().altered(), measure);
    }

    @Test
    void whatWasPinnedComesOnTopOfWhatThePlanAlteredInTheSameMeasure() {
        FitResult first = altered(GarmentKind.BODICE, Map.of(Measure.ACROSS_BACK_WIDTH, 12.7));
        FitResult next = after(first, pinned("across back +", "1/4 in", PinnedAs.OPENED, PinnedAt.CENTRE));

        assertThat(mm(next, Measure.ACROSS_BACK_WIDTH))
                .isCloseTo(mm(first, Measure.ACROSS_BACK_WIDTH) + 6.35, within(0.1));
        Need need = next.needs().get(0);
        assertThat(need.decision().amountMm()).isCloseTo(12.7 + 6.35, within(1e-6));
        assertThat(need.decision().reason()).contains("The pins of the trial garment add +6 mm.");
    }

    @Test
    void aSeatPinnedOutIsNotTakenBackByTheHipsTarget() {
        FitResult first = altered(GarmentKind.SKIRT, Map.of(Measure.HIP_GIRTH, 25.4, Measure.WAIST_GIRTH, 25.4));
        FitResult next = after(first, pinned("large seat +", "3/8 in", PinnedAs.OPENED, PinnedAt.BOTH));

        // 3/8 in on each half back is 3/4 in round the body, over the seat alone.
        assertThat(mm(next, Measure.HIP_GIRTH)).isCloseTo(mm(first, Measure.HIP_GIRTH) + 0.75 * IN, within(0.5));
        assertThat(mm(next, Measure.WAIST_GIRTH)).isCloseTo(mm(first, Measure.WAIST_GIRTH), within(0.5));
    }

    @Test
    void aMeasureThatWasLeftAloneIsNotBroughtBackAfterThePinsMovedIt() {
        Pattern skirt = Drafted.shell(GarmentKind.SKIRT, "14");
        Body body = Body.named("as drafted")
                .with(Reading.taped(Measure.HIP_GIRTH, 38 * IN))
                .with(Reading.taped(Measure.WAIST_GIRTH, 28 * IN));
        FitResult first = Fitting.fit(skirt, body, Optional.empty(), Drafted.USUAL);
        assertThat(first.needs()).noneMatch(need -> need.decision().isAltered());
        FitResult next = after(first, pinned("skirt hip +", "1/2 in", PinnedAs.OPENED, PinnedAt.BOTH));

        assertThat(mm(next, Measure.HIP_GIRTH)).isCloseTo(mm(first, Measure.HIP_GIRTH) + IN, within(0.1));
    }

    @Test
    void aDeeperCrotchLengthensBothCrotchSeamsByItsAmountOnTop() {
        // trade facts 4.3, crotch depth: front and back crotch length change by N each.
        FitResult first = altered(
                GarmentKind.TROUSERS,
                Map.of(Measure.BODY_RISE, 12.7, Measure.FRONT_CROTCH_LENGTH, 15.0, Measure.BACK_CROTCH_LENGTH, 20.0));
        FitResult next = after(first, pinned("crotch depth +", "1/4 in", PinnedAs.OPENED, PinnedAt.BOTH));

        assertThat(mm(next, Measure.BODY_RISE)).isCloseTo(mm(first, Measure.BODY_RISE) + 6.35, within(0.1));
        for (Measure seam : List.of(Measure.FRONT_CROTCH_LENGTH, Measure.BACK_CROTCH_LENGTH)) {
            assertThat(mm(next, seam)).as(seam.term()).isCloseTo(mm(first, seam) + 6.35, within(0.5));
        }
    }

    @Test
    void aSecondSittingAddsToTheFirst() {
        FitResult fit = altered(GarmentKind.BODICE, Map.of(Measure.BACK_WAIST_LENGTH, 12.7));
        Pinned quarter = pinned("length below the bust -", "1/8 in", PinnedAs.FOLD_DEPTH, PinnedAt.BOTH);
        FitResult twice = NextFit.after(
                fit, List.of(new Sitting("first", List.of(quarter)), new Sitting("second", List.of(quarter))));

        assertThat(twice.report().failures()).isEmpty();
        assertThat(mm(twice, Measure.BACK_WAIST_LENGTH))
                .isCloseTo(mm(fit, Measure.BACK_WAIST_LENGTH) - 0.5 * IN, within(0.2));
    }

    @Test
    void aSittingWithoutFindingsChangesNothing() {
        FitResult fit = altered(GarmentKind.SKIRT, Map.of(Measure.HIP_GIRTH, 25.4));

        assertThat(NextFit.after(fit, List.of(new Sitting("all well", List.of()))))
                .isSameAs(fit);
    }

    @Test
    void oneSideChangesAndTheOtherIsAsItWas() {
        FitResult first = altered(GarmentKind.SKIRT, Map.of(Measure.HIP_GIRTH, 25.4));
        FitResult next = after(first, pinned("one hip higher +", "3/8 in", PinnedAs.OPENED, PinnedAt.LEFT));
        Pattern altered = next.worked().altered();
        double was = first.worked().altered().piece("skirt front").edge("side").length();

        assertThat(altered.piece("skirt front, right").edge("side").length()).isCloseTo(was, within(0.5));
        assertThat(altered.piece("skirt front, left").edge("side").length()).isCloseTo(was + 9.5, within(2.0));
    }

    @Test
    void onPaperTheTypedMeasuresStay() {
        Body body = Body.named("paper").with(Reading.taped(Measure.HIP_GIRTH, 42 * IN));
        FitResult first = Fitting.onPaper(
                Drafted.shell(GarmentKind.SKIRT, "14"),
                body,
                Optional.empty(),
                Map.of(Measure.HIP_GIRTH, 41 * IN),
                Drafted.USUAL);
        double wanted = first.needs().get(0).decision().amountMm();
        FitResult next = after(first, pinned("skirt hip +", "1/4 in", PinnedAs.OPENED, PinnedAt.BOTH));

        assertThat(next.schematic()).isTrue();
        assertThat(next.needs().get(0).decision().amountMm()).isCloseTo(wanted + 12.7, within(1e-6));
        assertThat(next.needs().get(0).flatMm()).hasValue(41 * IN);
    }
}
