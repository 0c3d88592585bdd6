package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.flat.FlatMeasure;
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

    static List<NumberRow> of(FitResult fit) {
        LengthFormat show = fit.choices().show();
        List<NumberRow> rows = new ArrayList<>();
        for (Need need : fit.needs()) {
            if (need.flatMm().isPresent()) {
                Optional<FlatMeasure> now = fit.schematic()
                        ? Optional.empty()
                        : FlatPattern.measure(fit.worked().altered(), need.measure());
                rows.add(new NumberRow(
                        need.measure().term(),
                        MeasureWords.label(need.measure()),
                        show.show(need.flatMm().getAsDouble()),
                        show.show(now.map(FlatMeasure::mm)
                                .orElseGet(() -> need.targetMm().orElseThrow())),
                        need.decision().isAltered()
                                ? show.showSigned(need.decision().amountMm())
                                : "",
                        each(fit, need, show)));
            }
        }
        return List.copyOf(rows);
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
