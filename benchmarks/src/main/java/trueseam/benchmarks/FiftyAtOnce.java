package trueseam.benchmarks;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import trueseam.records.RecordBook;
import trueseam.worktable.project.ChangedElsewhereException;
import trueseam.worktable.project.Kept;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.project.Shelf;

/**
 * How long does a save take when fifty people work at once, and is any lost? Each of forty types into a project of her own, ten type into
 * one that they share; each saves once a second by the clock, as fast typing does, through a shelf of its own, as in a program of her
 * own. A save writes the project's state, her day with its readings, and what follows from it, in one transaction.
 *
 * <p>A save is timed from the moment at which it was due, so that a slow one makes the next ones late and is not hidden. Every save adds one
 * to a number in the project: at the end the number has to be as many as were answered, or one was lost. Arguments: the address of an
 * empty PostgreSQL database, seconds.
 */
public final class FiftyAtOnce {

    private static final int OWN = 40;
    private static final int SHARING = 10;
    private static final long PAUSE_NS = TimeUnit.SECONDS.toNanos(1);
    private static final int MEASURES = 12;

    private final RecordBook book;
    private final long endNs;

    private FiftyAtOnce(RecordBook book, long endNs) {
        this.book = book;
        this.endNs = endNs;
    }

    private record Saved(String project, List<Long> tookNs, int refused) {}

    /**
     * Runs it.
     *
     * @param args the address of the database, and for how many seconds
     * @throws InterruptedException if it is ended
     * @throws ExecutionException if a session failed
     */
    public static void main(String[] args) throws InterruptedException, ExecutionException {
        long seconds = args.length > 1 ? Long.parseLong(args[1]) : 60;
        try (RecordBook book = RecordBook.open(args[0], Optional.empty(), Clock.systemUTC())) {
            Shelf shelf = new Shelf(book.drawer(RecordBook.SINGLE_OWNER));
            FiftyAtOnce run = new FiftyAtOnce(book, System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds));
            String shared = shelf.begin(counting(0));
            List<Callable<Saved>> sessions = new ArrayList<>();
            for (int i = 0; i < OWN + SHARING; i++) {
                String project = i < OWN ? shelf.begin(counting(0)) : shared;
                long seed = i;
                sessions.add(() -> run.session(project, seed));
            }
            List<Saved> all = run.together(sessions);
            boolean own = said("own project", all.subList(0, OWN), shelf);
            boolean sharing = said("shared project", all.subList(OWN, OWN + SHARING), shelf);
            if (!own || !sharing) {
                System.exit(1);
            }
        }
    }

    private List<Saved> together(List<Callable<Saved>> sessions) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(sessions.size());
        try {
            List<Saved> saved = new ArrayList<>();
            for (Future<Saved> one : threads.invokeAll(sessions)) {
                saved.add(one.get());
            }
            return saved;
        } finally {
            threads.shutdownNow();
        }
    }

    private Saved session(String project, long seed) throws InterruptedException {
        Shelf shelf = new Shelf(book.drawer(RecordBook.SINGLE_OWNER));
        List<Long> took = new ArrayList<>();
        int refused = 0;
        long due = System.nanoTime() + (long) (new Random(seed).nextDouble() * PAUSE_NS);
        while (due < endNs) {
            TimeUnit.NANOSECONDS.sleep(Math.max(0, due - System.nanoTime()));
            refused += save(shelf, project);
            took.add(System.nanoTime() - due);
            due += PAUSE_NS;
        }
        return new Saved(project, took, refused);
    }

    /** Whoever is refused looks at what is there and types again, as the page tells her to. */
    private static int save(Shelf shelf, String project) {
        int refused = 0;
        while (true) {
            Kept now = shelf.kept(project);
            int count = count(now.project());
            try {
                shelf.change(project, now.version(), kept -> kept.changed("Typed", "", counting(count + 1)));
                return refused;
            } catch (ChangedElsewhereException e) {
                refused++;
            }
        }
    }

    /** An invented person whose waist, in millimetres, counts. */
    private static Project counting(int count) {
        List<PersonPart.Typed> readings = new ArrayList<>();
        readings.add(new PersonPart.Typed("waist girth", "", count + " mm", "mm"));
        for (int i = 1; i < MEASURES; i++) {
            readings.add(new PersonPart.Typed("measure " + i, "", "30", "in"));
        }
        return Project.named("Counting")
                .with(new PersonPart("Nobody", "in", List.of(new PersonPart.Day("2026-11-26", readings, ""))));
    }

    private static int count(Project project) {
        String text = project.person().days().get(0).readings().get(0).text();
        return Integer.parseInt(text.replace(" mm", ""));
    }

    private static boolean said(String what, List<Saved> sessions, Shelf shelf) {
        List<Long> took = sessions.stream()
                .flatMap(session -> session.tookNs().stream())
                .sorted()
                .toList();
        int refused = sessions.stream().mapToInt(Saved::refused).sum();
        int counted = sessions.stream()
                .map(Saved::project)
                .distinct()
                .mapToInt(project -> count(shelf.kept(project).project()))
                .sum();
        System.out.println(String.format(
                Locale.ROOT,
                "%s: %d sessions, %d saves, %d counted (%s), refused and made again %d; ms: p50 %.0f, p95 %.0f, p99 %.0f,"
                        + " most %.0f",
                what,
                sessions.size(),
                took.size(),
                counted,
                counted == took.size() ? "none lost" : "LOST",
                refused,
                ms(took, 0.5),
                ms(took, 0.95),
                ms(took, 0.99),
                ms(took, 1)));
        return counted == took.size();
    }

    private static double ms(List<Long> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * sorted.size()))) / 1e6;
    }
}
