package trueseam.output.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.finding.Finding;
import trueseam.garment.flat.FlatPattern;

/**
 * The fitting chart of a fit: its lines, and what stands below them.
 *
 * @param fit the fit
 * @param size why this size, if the program chose it
 * @param lines a line a measure, in the order of the fit
 * @param sleeve what the sleeve costs, the way taken first; empty where no sleeve girth is altered
 */
public record FittingChart(FitResult fit, Optional<SizeChoice> size, List<ChartLine> lines, List<SleeveCost> sleeve) {

    // Immutable.
    public FittingChart {
        lines = List.copyOf(lines);
        sleeve = List.copyOf(sleeve);
    }

    /**
     * Draws up the chart; what was measured after is measured here, on the altered flat pattern.
     *
     * @param fit the fit
     * @param size why this size, if the program chose it
     * @param otherCaps the same fit with the other cap choices, to show what they cost; may be empty
     * @return the chart
     */
    public static FittingChart of(FitResult fit, Optional<SizeChoice> size, List<FitResult> otherCaps) {
        List<ChartLine> lines = new ArrayList<>();
        for (Need need : fit.needs()) {
            lines.add(new ChartLine(
                    need, changeOf(fit, need), ChartLine.Sides.of(fit.body(), need.measure()), after(fit, need)));
        }
        List<SleeveCost> sleeve = new ArrayList<>();
        SleeveCost.of(fit, true).ifPresent(sleeve::add);
        for (FitResult other : otherCaps) {
            SleeveCost.of(other, false).ifPresent(sleeve::add);
        }
        return new FittingChart(fit, size, lines, sleeve);
    }

    private static Optional<Change> changeOf(FitResult fit, Need need) {
        return fit.changes().stream()
                .filter(change -> change.measure() == need.measure())
                .findFirst();
    }

    /** Schematic pieces say nothing of what the paper will measure. */
    private static OptionalDouble after(FitResult fit, Need need) {
        if (fit.schematic()) {
            return OptionalDouble.empty();
        }
        return FlatPattern.measure(fit.worked().altered(), need.measure())
                .map(flat -> OptionalDouble.of(flat.mm()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Everything that the dressmaker should know.
     *
     * @return findings of the choice of size, then of the fit
     */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(size.map(SizeChoice::findings).orElse(List.of()));
        all.addAll(fit.findings());
        return List.copyOf(all);
    }
}
