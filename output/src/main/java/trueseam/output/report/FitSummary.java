package trueseam.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.FittingChart;
import trueseam.output.words.LevelWords;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.ProofWords;
import trueseam.output.words.RulerLength;

/** A fit for the terminal: a table with aligned columns, then size, warnings and whether the proofs hold. */
public final class FitSummary {

    private static final String BETWEEN = "  ";

    private static final List<String> HEAD =
            List.of("measure", "body", "paper", "need", "decision", "per edge", "after");

    private final FittingChart chart;
    private final LengthFormat show;
    private final RulerLength ruler;

    private FitSummary(FittingChart chart) {
        this.chart = chart;
        this.show = chart.fit().choices().show();
        this.ruler = new RulerLength(show);
    }

    /**
     * The summary.
     *
     * @param chart the fitting chart
     * @return lines of plain text, each ended by a line feed
     */
    public static String text(FittingChart chart) {
        return new FitSummary(chart).lines();
    }

    private String lines() {
        FitResult fit = chart.fit();
        StringBuilder text = new StringBuilder();
        String size = fit.worked().original().size();
        text.append(fit.worked().original().name())
                .append(size.isBlank() ? "" : ", size " + size)
                .append(", for ")
                .append(fit.body().label())
                .append("\n\n");
        table(text);
        text.append('\n');
        chart.size().map(SizeChoice::reason).ifPresent(reason -> line(text, "Size: " + reason));
        if (fit.schematic()) {
            line(
                    text,
                    "Paper pattern: its figures are those that were typed; steps and proofs are on schematic pieces.");
        }
        for (Finding finding : chart.findings()) {
            line(text, MeasureWords.capital(finding.place()) + ": " + finding.sentence());
        }
        LevelWords.of(fit).forEach(words -> line(text, words));
        line(text, ProofWords.headline(fit.report()));
        ProofWords.failures(fit.report()).forEach(words -> line(text, BETWEEN + words));
        return text.toString();
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }

    private void table(StringBuilder text) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEAD);
        for (ChartLine line : chart.lines()) {
            rows.add(row(line));
        }
        int[] widths = new int[HEAD.size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                boolean number = i != 0 && i != 4;
                String blank = " ".repeat(widths[i] - row.get(i).length());
                line.append(i == 0 ? "" : BETWEEN).append(number ? blank + row.get(i) : row.get(i) + blank);
            }
            line(text, line.toString().stripTrailing());
        }
    }

    private List<String> row(ChartLine line) {
        Need need = line.need();
        String mark =
                switch (need.body().origin()) {
                    case TAPED -> "";
                    case TABLE, STAND_IN, ESTIMATED ->
                        " (" + MeasureWords.origin(need.body().origin()) + ")";
                };
        return List.of(
                line.label() + mark,
                show.show(need.body().mm()),
                paper(need),
                show.showSigned(need.needMm()),
                line.verdict() + decidedBy(need),
                line.change()
                        .map(change -> ruler.showSigned(change.perEdgeMm())
                                + (change.edges() > 1 ? " at " + change.edges() : ""))
                        .orElse("-"),
                after(line));
    }

    private String decidedBy(Need need) {
        if (!need.decision().overruled()) {
            return "";
        }
        return chart.fit().choices().isStanding(need.measure()) ? " (standing)" : " (yours)";
    }

    private String paper(Need need) {
        return switch (need.method()) {
            case TABLE -> "table " + shown(need.tableMm());
            case FLAT -> "flat " + shown(need.flatMm());
        };
    }

    private String after(ChartLine line) {
        return line.afterMm().isPresent() ? shown(line.afterMm()) : "-";
    }

    private String shown(OptionalDouble mm) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "-";
    }
}
