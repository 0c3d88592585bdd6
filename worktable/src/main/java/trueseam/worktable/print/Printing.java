package trueseam.worktable.print;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.standing.TakenUp;
import trueseam.fitting.work.WorkedPattern;
import trueseam.intake.patternfile.PatternFile;
import trueseam.output.chart.ChartCsv;
import trueseam.output.chart.ChartSheet;
import trueseam.output.chart.FittingChart;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.PrintOptions;
import trueseam.output.report.Occasion;
import trueseam.output.report.ReportJson;
import trueseam.output.steps.StepSheet;
import trueseam.output.strips.TapeOnStrips;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/** What a project gives to print and to take away. */
final class Printing {

    private static final String AS_BOUGHT =
            "This is the pattern as it was taken up: it has not been fitted to anybody yet.";

    private final Workings workings;
    private final PrintChoices choices;

    Printing(Workings workings) {
        this.workings = workings;
        this.choices = PrintChoices.of(workings.project());
    }

    PrintChoices choices() {
        return choices;
    }

    /** The fit; the chart, the steps and the strips need one. */
    Outcome<FitResult> fit() {
        return workings.fit();
    }

    /** The pieces laid out: fitted, or as taken up where nobody was measured yet. */
    Outcome<FullSizePrint> pieces() {
        return with(options -> {
            if (workings.fit().isThere()) {
                return Outcome.of(FullSizePrint.of(workings.fit().get(), options));
            }
            Outcome<Taken> taken = workings.taken();
            if (!taken.isThere()) {
                return taken.reason();
            }
            if (!workings.fit().missing()) {
                return workings.fit()
                        .reason(); // a plan that the pieces cannot take is not printed as if nothing was wanted
            }
            return Outcome.of(FullSizePrint.of(WorkedPattern.of(taken.get().pattern()), options, List.of(AS_BOUGHT)));
        });
    }

    /** The strips; there are none before a fit. */
    Outcome<byte[]> strips() {
        return with(options -> then(fit(), fit -> TapeOnStrips.pdf(fit, options)));
    }

    /** The file of one kind, made now. */
    Outcome<byte[]> file(Leaf leaf, LocalDate today) {
        return switch (leaf) {
            case PRINT -> then(pieces(), print -> print.pdf());
            case STRIPS -> strips();
            case STEPS -> then(fit(), fit -> StepSheet.pdf(fit, choices.sheets()));
            case CHART -> then(fit(), fit -> ChartSheet.pdf(chart(fit), choices.sheets()));
            case CHART_CSV -> then(fit(), fit -> utf8(ChartCsv.text(chart(fit))));
            case ALTERED ->
                then(
                        fit(),
                        fit -> utf8(PatternFile.write(
                                fit.worked().altered(), Optional.of(fit.worked().original()))));
            case REPORT ->
                then(
                        fit(),
                        fit -> utf8(ReportJson.text(
                                chart(fit),
                                new Occasion(
                                        Optional.of(today),
                                        choices.worn(),
                                        workings.takenUp()
                                                .map(TakenUp::requests)
                                                .orElse(List.of())))));
        };
    }

    private FittingChart chart(FitResult fit) {
        return FittingChart.of(fit, workings.taken().value().flatMap(Taken::choice), List.of());
    }

    private <T> Outcome<T> with(Function<PrintOptions, Outcome<T>> work) {
        return choices.options()
                .map(options -> Outcome.orSentence(() -> work.apply(options)))
                .orElseGet(() -> Outcome.refused(choices.problem()));
    }

    private static <S, T> Outcome<T> then(Outcome<S> outcome, Function<S, T> work) {
        return outcome.isThere() ? Outcome.orSentence(() -> Outcome.of(work.apply(outcome.get()))) : outcome.reason();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
