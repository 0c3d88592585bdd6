package trueseam.benchmarks;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
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
 * empty PostgreSQL database, cold seconds, warm seconds, the process of the database.
 */
public final class FiftyAtOnce {

    private static final int OWN = 40;
    private static final int SHARING = 10;
    private static final long PAUSE_MS = 1_000;
    private static final int MEASURES = 12;

    private FiftyAtOnce() {}

    /**
     * Runs it.
     *
     * @param args as the class says
     * @throws InterruptedException if it is ended
     * @throws ExecutionException if a session failed
     */
    public static void main(String[] args) throws InterruptedException, ExecutionException {
        try (RecordBook book = RecordBook.open(args[0], Optional.empty(), Clock.systemUTC())) {
            Shelf shelf = new Shelf(book.drawer(RecordBook.SINGLE_OWNER));
            List<String> own = new ArrayList<>();
            for (int i = 0; i < OWN; i++) {
                own.add(shelf.begin(counting(0)));
            }
            List<String> shared = List.of(shelf.begin(counting(0)));
            Pace pace = Pace.now(Long.parseLong(args[1]), Long.parseLong(args[2]), PAUSE_MS);
            CpuTime program = CpuTime.of(ProcessHandle.current().pid(), pace);
            CpuTime database = CpuTime.of(Long.parseLong(args[3]), pace);
            List<Callable<SaveTimes>> sessions = new ArrayList<>();
            own.forEach(project -> sessions.add(session(book, pace, project, sessions.size())));
            for (int i = 0; i < SHARING; i++) {
                sessions.add(session(book, pace, shared.get(0), sessions.size()));
            }
            List<SaveTimes> all = SaveTimes.together(sessions);
            int saves = SaveTimes.of(all).warmNs().size();
            String cost = program.each("program", saves) + ", " + database.each("database", saves);
            int lost = said("Repositories: 40, a project each", all.subList(0, OWN), own, shelf)
                    + said("Repositories: 10 in one project", all.subList(OWN, OWN + SHARING), shared, shelf);
            SaveTimes.of(all).print("Repositories: all fifty", lost);
            System.out.println("  of the processors, each warm save: " + cost);
            if (lost != 0) {
                System.exit(1);
            }
        }
    }

    private static Callable<SaveTimes> session(RecordBook book, Pace pace, String project, long seed) {
        Shelf shelf = new Shelf(book.drawer(RecordBook.SINGLE_OWNER));
        return () -> pace.kept(seed, () -> save(shelf, project));
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

    private static int said(String what, List<SaveTimes> sessions, List<String> projects, Shelf shelf) {
        SaveTimes times = SaveTimes.of(sessions);
        int counted = projects.stream()
                .mapToInt(project -> count(shelf.kept(project).project()))
                .sum();
        int lost = times.saves() - counted;
        times.print(what, lost);
        return lost;
    }
}
