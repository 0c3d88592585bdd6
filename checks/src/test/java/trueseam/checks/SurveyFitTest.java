package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/**
 * Fits every one of the 6,068 people of the 2012 US Army survey (Gordon and others, NATICK/TR-15/007, public domain): women with
 * shells in the size that the program chooses from the misses' and women's tables, men with shells of the men's table, which is
 * computed from the survey itself. The survey's waist is at the navel and several measures are stand-ins, so the needs are larger
 * than a dressmaker meets.
 */
class SurveyFitTest {

    private static final LengthFormat SHOW = LengthFormat.inches(8);
    private static final Path BODIES = Path.of("..", "data", "bodies");

    /** Read once: reading a table takes longer than a fit. */
    private static final Map<String, SizeTable> TABLES = new ConcurrentHashMap<>();

    private final Map<String, Pattern> shells = new ConcurrentHashMap<>();

    private record Outcome(String body, boolean reported, boolean holds, String why, List<String> altered) {}

    @ParameterizedTest
    @EnumSource(GarmentKind.class)
    void everySurveyedPersonGetsAPatternWithAReportAndNineHundredNinetyFiveInAThousandPassEveryProof(GarmentKind kind)
            throws IOException {
        List<Outcome> outcomes = new ArrayList<>();
        outcomes.addAll(all("ansur2-female.csv", body -> fit(body, kind, List.of("misses", "women"))));
        outcomes.addAll(all("ansur2-male.csv", body -> fit(body, kind, List.of("men"))));
        assertThat(outcomes).hasSize(6068);
        write(kind, outcomes);
        long passed = outcomes.stream().filter(Outcome::holds).count();
        assertThat(outcomes).allSatisfy(o -> assertThat(o.reported())
                .as(o.body() + " gets a pattern: " + o.why())
                .isTrue());
        assertThat(outcomes.stream().filter(o -> !o.holds()))
                .allSatisfy(o -> assertThat(o.why()).as(o.body()).isNotBlank());
        assertThat((double) passed / outcomes.size())
                .as(kind + ": " + passed + " of " + outcomes.size() + " pass every proof; the rest: "
                        + reasons(outcomes))
                .isGreaterThanOrEqualTo(0.995);
    }

    private static List<Outcome> all(String file, Function<Body, Outcome> fit) {
        return Survey.read(BODIES.resolve(file)).rows().parallelStream()
                .map(SurveyRow::asBody)
                .map(fit)
                .toList();
    }

    private Outcome fit(Body body, GarmentKind kind, List<String> tables) {
        try {
            SizeChoice choice = nearest(body, kind, tables);
            Pattern shell =
                    shells.computeIfAbsent(choice.table() + " " + choice.row().size(), key -> draft(choice, kind));
            FitResult fit = Fitting.fit(shell, body, Optional.of(choice.row()), FitChoices.usual(SHOW));
            String why = fit.report().failures().stream().map(p -> p.sentence()).collect(Collectors.joining(" "));
            List<String> altered =
                    fit.changes().stream().map(c -> c.measure().term()).toList();
            return new Outcome(body.label(), true, fit.report().holds(), why, altered);
        } catch (IllegalArgumentException e) {
            // The rooms refuse what cannot be altered with a type of their own; anything else is a crash and fails the
            // test.
            assertThat(e.getClass().getName()).startsWith("trueseam.");
            return new Outcome(body.label(), false, false, e.getMessage(), List.of());
        }
    }

    private static SizeChoice nearest(Body body, GarmentKind kind, List<String> tables) {
        SizeChoice best = null;
        for (String table : tables) {
            SizeChoice choice = SizeChoice.of(TABLES.computeIfAbsent(table, SizeTables::named), body, kind, SHOW);
            if (best == null
                    || Math.abs(choice.tableMm() - choice.bodyMm()) < Math.abs(best.tableMm() - best.bodyMm()) - 1e-9) {
                best = choice;
            }
        }
        return best;
    }

    private static Pattern draft(SizeChoice choice, GarmentKind kind) {
        SizeTable table = TABLES.computeIfAbsent(choice.table(), SizeTables::named);
        DraftFigure figure = DraftFigure.of(table, choice.row().size());
        DraftEase ease = DraftEase.fitted();
        return switch (kind) {
            case BODICE -> Shells.bodice(figure, ease);
            case DRESS -> Shells.dress(figure, ease);
            case SKIRT -> Shells.skirt(figure, ease);
            case TROUSERS -> Shells.trousers(figure, ease);
        };
    }

    private static Map<String, Long> reasons(List<Outcome> outcomes) {
        return outcomes.stream()
                .filter(o -> !o.holds())
                .collect(Collectors.groupingBy(
                        o -> o.why().replaceAll("-?[0-9]+(\\.[0-9]+)?(E-?[0-9]+)?", "#"),
                        TreeMap::new,
                        Collectors.counting()));
    }

    private static void write(GarmentKind kind, List<Outcome> outcomes) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add(kind + ": " + outcomes.stream().filter(Outcome::holds).count() + " of " + outcomes.size()
                + " pass every proof");
        lines.add("Altered measures, by how many people:");
        outcomes.stream()
                .flatMap(o -> o.altered().stream())
                .collect(Collectors.groupingBy(m -> m, TreeMap::new, Collectors.counting()))
                .forEach((measure, count) -> lines.add("  " + count + "  " + measure));
        outcomes.stream().filter(o -> !o.holds()).forEach(o -> lines.add(o.body() + ": " + o.why()));
        Path folder = Files.createDirectories(Path.of("target", "survey"));
        Files.write(folder.resolve(kind + ".txt"), lines);
    }
}
