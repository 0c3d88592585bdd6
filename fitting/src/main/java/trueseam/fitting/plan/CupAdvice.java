package trueseam.fitting.plan;

import java.util.List;
import java.util.Optional;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.finding.Finding;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * Says when a bust need is one of the front alone: the body is fuller at the bust, over its upper chest, than the pattern was drawn for
 * (two inches, a B; common practice, [web:cupA] [web:cupB]), so that front and back should not take the same change ([TX372]: choose by
 * the upper chest, then alter the front).
 */
final class CupAdvice {

    /** What most paper patterns are drawn for: full bust less upper chest, 2 in (common practice). */
    private static final double DRAWN_FOR_MM = 50.8;

    /** The half-inch rule again: a smaller difference is left (common practice). */
    private static final double LEAVE_MM = 12.7;

    private static final List<String> NAMES = List.of("full bust", "full bust in panels");

    private CupAdvice() {}

    static Optional<Finding> of(Pattern pattern, Body body, List<Need> needs, FitChoices choices) {
        Optional<String> name = Repertoire.of(pattern).stream()
                .map(Entry::name)
                .filter(NAMES::contains)
                .findFirst();
        Optional<BodyValue> bust = body.value(Measure.BUST_GIRTH);
        Optional<BodyValue> chest = body.value(Measure.UPPER_CHEST_GIRTH);
        boolean widened = needs.stream()
                .anyMatch(need -> need.measure() == Measure.BUST_GIRTH
                        && need.decision().isAltered()
                        && need.decision().amountMm() > 0);
        boolean asked = choices.requests().stream()
                .anyMatch(request -> NAMES.contains(request.entry().name()));
        if (bust.isEmpty() || chest.isEmpty() || !widened || asked || name.isEmpty()) {
            return Optional.empty();
        }
        double fuller = bust.get().mm() - chest.get().mm();
        if (fuller - DRAWN_FOR_MM < LEAVE_MM) {
            return Optional.empty();
        }
        return Optional.of(Finding.note(
                Measure.BUST_GIRTH.term(),
                "The bust is " + choices.show().show(fuller)
                        + " fuller than the upper chest, and most patterns are drawn for "
                        + choices.show().show(DRAWN_FOR_MM)
                        + " (common practice): what is wanted there is wanted in front. Consider the alteration \""
                        + name.get()
                        + "\" of " + choices.show().show(fuller - DRAWN_FOR_MM)
                        + " instead of widening front and back alike; the side seams then give only the rest."));
    }
}
