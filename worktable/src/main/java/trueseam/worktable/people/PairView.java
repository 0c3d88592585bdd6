package trueseam.worktable.people;

import java.util.List;
import java.util.Optional;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.length.LengthFormat;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.ChartPair;
import trueseam.output.chart.FittingChart;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/**
 * Two fittings of one person side by side.
 *
 * @param first the name of the first project
 * @param second the name of the second
 * @param problem why they cannot be laid side by side, or empty
 * @param rows measure by measure
 */
public record PairView(String first, String second, String problem, List<Row> rows) {

    /**
     * One measure.
     *
     * @param label what it is called
     * @param need what is needed
     * @param amount what was taken
     * @param result what the altered pattern measures
     */
    public record Row(String label, Cells need, Cells amount, Cells result) {

        /**
         * Whether anything differs.
         *
         * @return true if one of the three does
         */
        public boolean differs() {
            return need.differs() || amount.differs() || result.differs();
        }
    }

    /**
     * The same thing of both.
     *
     * @param first of the first
     * @param second of the second
     * @param differs whether they differ by more than a step of a ruler
     */
    public record Cells(String first, String second, boolean differs) {}

    /** Does not change. */
    public PairView {
        rows = List.copyOf(rows);
    }

    static PairView of(Project first, Workings one, Project second, Workings other) {
        Outcome<FitResult> a = one.fit();
        Outcome<FitResult> b = other.fit();
        if (!a.isThere() || !b.isThere()) {
            String which = a.isThere() ? second.name() : first.name();
            return new PairView(
                    first.name(),
                    second.name(),
                    "There is no fitting of " + which + " yet: " + (a.isThere() ? b : a).sentence(),
                    List.of());
        }
        LengthFormat show = first.person().format();
        List<Row> rows = ChartPair.of(chart(a.get(), one), chart(b.get(), other)).lines().stream()
                .map(line -> row(line, show))
                .toList();
        return new PairView(first.name(), second.name(), "", rows);
    }

    private static FittingChart chart(FitResult fit, Workings workings) {
        return FittingChart.of(fit, workings.taken().value().flatMap(Taken::choice), List.of());
    }

    private static Row row(ChartPair.Line line, LengthFormat show) {
        return new Row(
                MeasureWords.label(line.measure()),
                new Cells(need(line.first(), show), need(line.second(), show), line.needDiffers()),
                new Cells(amount(line.first(), show), amount(line.second(), show), line.amountDiffers()),
                new Cells(after(line.first(), show), after(line.second(), show), line.resultDiffers()));
    }

    private static String need(Optional<ChartLine> line, LengthFormat show) {
        return line.map(one -> show.showSigned(one.need().needMm())).orElse("–");
    }

    private static String amount(Optional<ChartLine> line, LengthFormat show) {
        return line.map(one -> show.showSigned(one.need().decision().amountMm()))
                .orElse("–");
    }

    private static String after(Optional<ChartLine> line, LengthFormat show) {
        return line.filter(one -> one.afterMm().isPresent())
                .map(one -> show.show(one.afterMm().getAsDouble()))
                .orElse("–");
    }
}
