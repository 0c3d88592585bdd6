package trueseam.worktable.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.FittingChart;
import trueseam.output.words.LevelWords;
import trueseam.output.words.ProofWords;
import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.project.ChartPart;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/**
 * What the Chart screen shows.
 *
 * @param part what was decided
 * @param needs the needs, or why there are none
 * @param rows the chart
 * @param asked the alterations asked for by name
 * @param families what can be asked for, by family
 * @param fit the fit, or why there is none
 * @param choices the general choices
 * @param questions what handbooks answer differently about this garment
 */
public record ChartView(
        ChartPart part,
        Outcome<List<Need>> needs,
        List<ChartRow> rows,
        List<AskedRow> asked,
        List<Group> families,
        Outcome<FitResult> fit,
        List<ChoiceRow> choices,
        List<QuestionRow> questions) {

    /**
     * An alteration asked for by name.
     *
     * @param at its place in the list
     * @param typed as it was typed
     * @param entry the alteration, if there is one of that name
     * @param problem what is wrong with it, else empty
     */
    public record AskedRow(int at, ChartPart.Asked typed, Optional<Entry> entry, String problem) {}

    /**
     * Alterations of one family that this pattern can take.
     *
     * @param family the family's word
     * @param entries its alterations
     */
    public record Group(String family, List<Entry> entries) {}

    static ChartView of(Workings workings, String problem) {
        Outcome<FitResult> fit = workings.fit();
        Outcome<List<Need>> needs = workings.needs();
        return new ChartView(
                workings.project().chart(),
                needs,
                lines(workings).stream()
                        .map(line -> ChartRow.of(line, workings))
                        .toList(),
                asked(workings, problem),
                families(workings),
                fit,
                ChoiceRow.all(workings.project().chart().choices()),
                questions(workings));
    }

    private static List<QuestionRow> questions(Workings workings) {
        Optional<GarmentKind> kind = workings.taken().value().map(Taken::kind);
        List<QuestionRow> rows = new ArrayList<>(QuestionRow.leastEase(workings.project(), kind));
        if (kind.filter(k -> k != GarmentKind.BODICE).isPresent()) {
            rows.add(QuestionRow.hipLine(workings.project()));
        }
        if (kind.filter(k -> k == GarmentKind.TROUSERS).isPresent()) {
            rows.add(QuestionRow.trouserHem(workings.project()));
        }
        return rows;
    }

    /** The lines of the fit; where the pieces cannot take the plan, the needs alone. */
    private static List<ChartLine> lines(Workings workings) {
        return workings.fit()
                .value()
                .map(fit -> FittingChart.of(fit, Optional.empty(), List.of()).lines())
                .orElseGet(() -> workings.needs().value().orElse(List.of()).stream()
                        .map(need -> new ChartLine(need, Optional.empty(), Optional.empty(), OptionalDouble.empty()))
                        .toList());
    }

    private static List<AskedRow> asked(Workings workings, String problem) {
        List<AskedRow> rows = new ArrayList<>();
        List<ChartPart.Asked> asked = workings.project().chart().asked();
        for (int i = 0; i < asked.size(); i++) {
            String field = "asked/" + i;
            String wrong = workings.choices().problems().stream()
                    .filter(p -> p.field().equals(field))
                    .map(p -> p.sentence())
                    .findFirst()
                    .orElse("");
            rows.add(new AskedRow(i, asked.get(i), Repertoire.named(asked.get(i).entry()), wrong));
        }
        if (!problem.isEmpty()) {
            rows.add(new AskedRow(-1, new ChartPart.Asked("", "", "", ""), Optional.empty(), problem));
        }
        return rows;
    }

    private static List<Group> families(Workings workings) {
        List<Entry> can =
                workings.taken().value().map(Taken::pattern).map(Repertoire::of).orElse(List.of());
        return Arrays.stream(Family.values())
                .map(family -> new Group(
                        family.word(),
                        can.stream().filter(e -> e.family() == family).toList()))
                .filter(group -> !group.entries().isEmpty())
                .toList();
    }

    /**
     * What the proofs say, in a sentence.
     *
     * @return the headline
     */
    public String headline() {
        return fit.value().map(f -> ProofWords.headline(f.report())).orElse("");
    }

    /**
     * Whether every proof holds.
     *
     * @return true if the altered pattern is proven
     */
    public boolean holds() {
        return fit.value().map(f -> f.report().holds()).orElse(false);
    }

    /**
     * The proofs that fail.
     *
     * @return a sentence each
     */
    public List<String> failures() {
        return fit.value().map(f -> ProofWords.failures(f.report())).orElse(List.of());
    }

    /**
     * What she should know.
     *
     * @return the findings of the fit
     */
    public List<Finding> findings() {
        return fit.value().map(FitResult::findings).orElse(List.of());
    }

    /**
     * What the pivots moved apart and truing brought together.
     *
     * @return a sentence each
     */
    public List<String> levels() {
        return fit.value().map(LevelWords::of).orElse(List.of());
    }
}
