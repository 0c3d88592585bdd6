package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;

/**
 * A measure of the pieces in numbers.
 *
 * @param term the measure's standard term
 * @param label what it is called in the workroom
 * @param before what the original pieces measure
 * @param now what the altered pieces measure
 * @param change what was decided in all; empty where it is left
 * @param each the amount at each cut edge; empty where it is left
 */
public record NumberRow(String term, String label, String before, String now, String change, String each) {

    /** A line for every measure that the pieces have; of a paper pattern also for what was decided without measuring it. */
    static List<NumberRow> of(FitResult fit) {
        LengthFormat show = fit.choices().show();
        List<NumberRow> rows = new ArrayList<>();
        for (Need need : fit.needs()) {
            boolean altered = need.decision().isAltered();
            if (need.flatMm().isPresent() || (fit.schematic() && altered)) {
                rows.add(new NumberRow(
                        need.measure().term(),
                        MeasureWords.label(need.measure()),
                        shown(need.flatMm(), show),
                        shown(nowMm(fit, need), show),
                        altered ? show.showSigned(need.decision().amountMm()) : "",
                        each(fit, need, show)));
            }
        }
        return List.copyOf(rows);
    }

    /** What the tape reads on the altered pieces; drafted pieces that stand for a paper pattern are not measured. */
    private static OptionalDouble nowMm(FitResult fit, Need need) {
        if (fit.schematic()) {
            return need.targetMm();
        }
        return FlatPattern.measure(fit.worked().altered(), need.measure())
                .map(now -> OptionalDouble.of(now.mm()))
                .orElseGet(need::targetMm);
    }

    private static String shown(OptionalDouble mm, LengthFormat show) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "";
    }

    private static String each(FitResult fit, Need need, LengthFormat show) {
        return fit.changes().stream()
                .filter(change -> change.measure() == need.measure())
                .findFirst()
                .map(change -> each(change, show))
                .orElse("");
    }

    private static String each(Change change, LengthFormat show) {
        return new RulerLength(show).showSigned(change.perEdgeMm())
                + (change.edges() > 1 ? " \u00d7 " + change.edges() : "");
    }
}
