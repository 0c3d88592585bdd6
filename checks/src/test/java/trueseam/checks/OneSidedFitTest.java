package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Request;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/** What she asks for by name, on one side or on both, joined with what the measures call for. */
class OneSidedFitTest {

    private static final FitChoices USUAL = FitChoices.usual(LengthFormat.inches(8));

    private static final Pattern BODICE =
            Shells.bodice(DraftFigure.of(SizeTables.named("misses"), "14"), DraftEase.fitted());

    /** Two inches more at the bust than the table's size 14 (38 in), the waist as in the table. */
    private static Body body() {
        return Body.named("example")
                .with(Reading.taped(Measure.BUST_GIRTH, 38 * 25.4))
                .with(Reading.taped(Measure.UPPER_CHEST_GIRTH, 35 * 25.4))
                .with(Reading.taped(Measure.WAIST_GIRTH, 28 * 25.4));
    }

    private static FitResult fit(Request... requests) {
        return Fitting.fit(
                BODICE,
                body(),
                Optional.of(SizeTables.named("misses").row("14")),
                USUAL.withRequests(List.of(requests)));
    }

    private static Request request(String name, double mm, Optional<Side> side) {
        Entry entry = Repertoire.named(name).orElseThrow();
        return new Request(entry, entry.variants().get(0), OptionalDouble.of(mm), side);
    }

    @Test
    void oneSidePartsThePiecesAndLeavesTheOtherSideAsTheMeasuresWantIt() {
        FitResult both = fit();
        FitResult right = fit(request("sway-back", 9.525, Optional.of(Side.RIGHT)));

        assertThat(right.report().failures()).isEmpty();
        Pattern altered = right.worked().altered();
        double other = altered.piece("bodice back, left").edge("centre back").length();
        assertThat(other)
                .isCloseTo(
                        both.worked()
                                .altered()
                                .piece("bodice back")
                                .edge("centre back")
                                .length(),
                        within(1.0));
        assertThat(FlatPattern.measure(altered, Measure.BUST_GIRTH)
                        .orElseThrow()
                        .mm())
                .isCloseTo(
                        FlatPattern.measure(BODICE, Measure.BUST_GIRTH)
                                        .orElseThrow()
                                        .mm()
                                + 50.8,
                        within(0.1));
    }

    @Test
    void aNamedChangeThatAlsoWidensIsCountedOnce() {
        // trade.md 6, example 3 [TX372]: the need of the bust stays what it is, whoever gives it.
        FitResult fit = fit(request("full bust", 25.4, Optional.empty()));

        assertThat(fit.report().failures()).isEmpty();
        assertThat(FlatPattern.measure(fit.worked().altered(), Measure.BUST_GIRTH)
                        .orElseThrow()
                        .mm())
                .isCloseTo(
                        FlatPattern.measure(BODICE, Measure.BUST_GIRTH)
                                        .orElseThrow()
                                        .mm()
                                + 50.8,
                        within(0.1));
        assertThat(fit.findings().toString()).contains("counted once");
    }

    @Test
    void aBustThatIsFullerThanThePatternIsDrawnForIsSaidToBeOneOfTheFront() {
        assertThat(fit().findings().toString()).contains("most patterns are drawn for 2 in");
        assertThat(fit(request("full bust", 25.4, Optional.empty())).findings().toString())
                .doesNotContain("most patterns are drawn for");
    }

    @Test
    void twoChangesThatMoveALineOppositeWaysAreSaidToFight() {
        Entry entry = Repertoire.named("sway-back").orElseThrow();
        Request up = new Request(entry, entry.variants().get(0), OptionalDouble.of(9.525), Optional.empty());
        Request down = new Request(entry, entry.variants().get(0), OptionalDouble.of(-9.525), Optional.empty());

        assertThat(fit(up, down).findings().toString()).contains("opposite ways");
        assertThat(fit(up).findings().toString()).doesNotContain("opposite ways");
    }

    @Test
    void anAmountBeyondWhatTheEntryIsTrustedWithIsWarnedOf() {
        assertThat(fit(request("sway-back", 25.4, Optional.empty())).findings().toString())
                .contains("usually trusted with");
        assertThat(fit(request("sway-back", 9.525, Optional.empty())).findings().toString())
                .doesNotContain("usually trusted with");
    }
}
