package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.trial.Cause;
import trueseam.fitting.trial.Counting;
import trueseam.fitting.trial.NextFit;
import trueseam.fitting.trial.PinCounting;
import trueseam.fitting.trial.Pinned;
import trueseam.fitting.trial.PinnedAs;
import trueseam.fitting.trial.PinnedAt;
import trueseam.fitting.trial.PinnedLine;
import trueseam.fitting.trial.Remedy;
import trueseam.fitting.trial.Sitting;
import trueseam.fitting.trial.Symptom;
import trueseam.fitting.trial.TrialFolds;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * Every symptom, every cause and every change of it on every drafted garment that can take it: the fit after the sitting begins from a
 * pattern that was altered for a body already, and it passes every proof.
 */
class TrialGarmentProofsTest {

    private static final double IN = 25.4;

    /** Half of a usual amount is what a first sitting pins. */
    private static final double SHARE = 0.5;

    /** What truing may take of a change that is done by its name and not by its measure. */
    private static final double TRUED_MM = 1;

    /** Size 14 of the misses' table with two inches more at bust, waist and hip, a longer waist, a larger arm and a deeper crotch. */
    private static Body body() {
        return Body.named("example")
                .with(Reading.taped(Measure.BUST_GIRTH, 38 * IN))
                .with(Reading.taped(Measure.UPPER_CHEST_GIRTH, 35 * IN))
                .with(Reading.taped(Measure.WAIST_GIRTH, 30 * IN))
                .with(Reading.taped(Measure.HIP_GIRTH, 40 * IN))
                .with(Reading.taped(Measure.BACK_WAIST_LENGTH, 17.25 * IN))
                .with(Reading.taped(Measure.UPPER_ARM_GIRTH, 13 * IN));
    }

    private record Trial(Symptom symptom, Cause cause, Remedy remedy) {}

    private static List<Trial> trials(Pattern pattern) {
        Map<Remedy, Trial> all = new LinkedHashMap<>();
        for (Symptom symptom : TrialFolds.symptoms()) {
            for (Cause cause : symptom.causes()) {
                for (Remedy remedy : cause.remedies()) {
                    if (Repertoire.of(pattern).contains(remedy.entry())) {
                        all.putIfAbsent(remedy, new Trial(symptom, cause, remedy));
                    }
                }
            }
        }
        return List.copyOf(all.values());
    }

    @TestFactory
    Stream<DynamicTest> everyPinnedChangeOnTopOfAnAlteredPatternPassesItsProofs() {
        List<DynamicTest> tests = new ArrayList<>();
        List<Pattern> patterns = new ArrayList<>(DraftedGarments.inSizes("14"));
        patterns.addAll(DraftedGarments.inParts("14"));
        for (Pattern pattern : patterns) {
            FitResult first = Fitting.fit(pattern, body(), Optional.empty(), FitChoices.usual(LengthFormat.inches(8)));
            assertThat(first.report().failures()).as(pattern.name()).isEmpty();
            for (Trial trial : trials(pattern)) {
                tests.add(DynamicTest.dynamicTest(
                        pattern.name() + ": " + trial.symptom().number() + " "
                                + trial.cause().key() + ": " + trial.remedy().does(),
                        () -> holds(first, pinned(trial, PinnedAt.BOTH))));
            }
        }
        return tests.stream();
    }

    /** Only the left was pinned: bodice, skirt and trousers that were altered on both sides before. */
    @TestFactory
    Stream<DynamicTest> everyPinnedChangeOfOneSidePassesItsProofs() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Pattern pattern : DraftedGarments.inSizes("14")) {
            FitResult first = Fitting.fit(pattern, body(), Optional.empty(), FitChoices.usual(LengthFormat.inches(8)));
            for (Trial trial : trials(pattern)) {
                tests.add(DynamicTest.dynamicTest(
                        pattern.name() + ", left: " + trial.cause().key() + ": "
                                + trial.remedy().does(),
                        () -> holds(first, pinned(trial, PinnedAt.LEFT))));
            }
        }
        return tests.stream();
    }

    private static void holds(FitResult first, Pinned pinned) {
        // Half of a usual amount is refused nowhere; a larger one may be, with a sentence.
        FitResult next = NextFit.after(first, List.of(new Sitting("first", List.of(pinned))));
        assertThat(next.report().failures()).isEmpty();
        if (pinned.at() == PinnedAt.BOTH) {
            cameOnTop(first, next, pinned);
        }
    }

    /** What is found by a measure is measured: the altered pattern before, and what was pinned on top of it. */
    private static void cameOnTop(FitResult first, FitResult next, Pinned pinned) {
        Entry entry = pinned.remedy().entry();
        if (!entry.solved()) {
            return;
        }
        Measure measure = entry.measures().get(0);
        Optional<FlatMeasure> before = FlatPattern.measure(first.worked().altered(), measure);
        Optional<FlatMeasure> after = FlatPattern.measure(next.worked().altered(), measure);
        assertThat(after.orElseThrow().mm() - before.orElseThrow().mm())
                .as(measure.term())
                .isCloseTo(pinned.amountMm(), within(TRUED_MM));
    }

    private static Pinned pinned(Trial trial, PinnedAt wanted) {
        double amountMm = SHARE * trial.remedy().entry().usualMm();
        Counting counting = PinCounting.of(trial.remedy().entry()).counting();
        PinnedAs as = Stream.of(PinnedAs.values())
                .filter(one -> one.measures(PinCounting.handling(trial.remedy()), counting))
                .findFirst()
                .orElseThrow();
        PinnedAt at = counting == Counting.ONE_SIDE ? PinnedAt.LEFT : wanted;
        double each = amountMm / counting.amountMm(as.takenMm(1), at);
        Pinned pinned =
                new Pinned(Optional.of(trial.symptom()), Optional.of(trial.cause()), trial.remedy(), each, as, at, "");
        assertThat(Math.abs(pinned.amountMm())).isCloseTo(amountMm, within(1e-9));
        return pinned;
    }

    @Test
    void whatAPieceCannotTakeIsRefusedWithASentence() {
        Pattern bodice = DraftedGarments.inSizes("14").get(0);
        FitResult first = Fitting.fit(bodice, body(), Optional.empty(), FitChoices.usual(LengthFormat.inches(8)));
        Pinned far = new PinnedLine("", "", "forward shoulder +", "12 in", "moved", "both", "")
                .read(bodice, LengthUnit.INCH);

        assertThatThrownBy(() -> NextFit.after(first, List.of(new Sitting("first", List.of(far)))))
                .isInstanceOf(IllegalArgumentException.class)
                .satisfies(e -> assertThat(e.getClass().getName()).startsWith("trueseam."))
                .hasMessageEndingWith(".");
    }

    @Test
    void manyChangesAreTried() {
        long tried = DraftedGarments.inSizes("14").stream()
                .mapToLong(pattern -> trials(pattern).size())
                .sum();
        assertThat(tried).isGreaterThan(100);
    }
}
