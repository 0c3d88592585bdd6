package trueseam.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/**
 * How long does it take to fit one garment to each of the 6,068 people of the public survey, each with her own size and her own
 * plan? The design allows 10 s on two cores.
 *
 * <p>Women are fitted with shells of the misses' and women's tables, men with the men's table, as SurveyFitTest does. A shell is drafted
 * once for each size; that, reading the survey and choosing the size are timed too. The first round of the first garment is a cold
 * start: the program as it runs once. CPU seconds are those of both threads, compiler and collector together. Arguments: garments (all where none is given).
 */
public final class SurveyedBodies {

    private static final int ROUNDS = 3;

    private final GarmentKind kind;
    private final Map<String, Pattern> shells = new HashMap<>();

    private SurveyedBodies(GarmentKind kind) {
        this.kind = kind;
    }

    private record Person(Body body, SizeChoice size, Pattern shell) {}

    private enum Outcome {
        PROVEN,
        FAILING,
        REFUSED
    }

    /**
     * Runs and prints.
     *
     * @param args garments
     */
    public static void main(String[] args) {
        List<GarmentKind> kinds = new ArrayList<>();
        for (String arg : args) {
            kinds.add(GarmentKind.valueOf(arg.toUpperCase(Locale.ROOT)));
        }
        System.out.println("garment    round   people  proven  failing  refused  seconds  cpu seconds");
        for (GarmentKind kind : kinds.isEmpty() ? List.of(GarmentKind.values()) : kinds) {
            for (int round = 1; round <= ROUNDS; round++) {
                long start = System.nanoTime();
                long cpu = cpuNanos();
                List<Outcome> outcomes = new SurveyedBodies(kind).outcomes();
                double cpuSeconds = seconds(cpuNanos() - cpu);
                double seconds = seconds(System.nanoTime() - start);
                System.out.printf(
                        Locale.ROOT,
                        "%-9s  %5d  %7d  %6d  %7d  %7d  %7.2f  %11.2f%n",
                        kind.name().toLowerCase(Locale.ROOT),
                        round,
                        outcomes.size(),
                        count(outcomes, Outcome.PROVEN),
                        count(outcomes, Outcome.FAILING),
                        count(outcomes, Outcome.REFUSED),
                        seconds,
                        cpuSeconds);
            }
        }
    }

    private static double seconds(long nanos) {
        return nanos / (double) TimeUnit.SECONDS.toNanos(1);
    }

    /** Of the whole process, compiler and collector included: what the work costs whatever else the machine does. */
    private static long cpuNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static long count(List<Outcome> outcomes, Outcome wanted) {
        return outcomes.stream().filter(outcome -> outcome == wanted).count();
    }

    private List<Outcome> outcomes() {
        List<Person> people = new ArrayList<>();
        people.addAll(people("ansur2-female.csv", List.of(SizeTables.named("misses"), SizeTables.named("women"))));
        people.addAll(people("ansur2-male.csv", List.of(SizeTables.named("men"))));
        return people.parallelStream().map(SurveyedBodies::fit).toList();
    }

    private List<Person> people(String file, List<SizeTable> tables) {
        List<Person> people = new ArrayList<>();
        for (SurveyRow row : Survey.read(Path.of("data", "bodies", file)).rows()) {
            people.add(person(row.asBody(), tables));
        }
        return people;
    }

    private Person person(Body body, List<SizeTable> tables) {
        SizeTable bestTable = null;
        SizeChoice best = null;
        for (SizeTable table : tables) {
            SizeChoice choice = SizeChoice.of(table, body, kind, Garments.SHOW);
            if (best == null || away(choice) < away(best) - 1e-9) {
                bestTable = table;
                best = choice;
            }
        }
        SizeTable table = bestTable;
        String size = best.row().size();
        Pattern shell = shells.computeIfAbsent(table.name() + " " + size, key -> Garments.shell(table, size, kind));
        return new Person(body, best, shell);
    }

    private static double away(SizeChoice choice) {
        return Math.abs(choice.tableMm() - choice.bodyMm());
    }

    private static Outcome fit(Person person) {
        try {
            FitResult fit = Fitting.fit(
                    person.shell(), person.body(), Optional.of(person.size().row()), Garments.CHOICES);
            return fit.report().holds() ? Outcome.PROVEN : Outcome.FAILING;
        } catch (IllegalArgumentException e) {
            return Outcome.REFUSED; // the rooms refuse what cannot be altered with a type of their own
        }
    }
}
