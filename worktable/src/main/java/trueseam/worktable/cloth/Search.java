package trueseam.worktable.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.LoggerFactory;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.need.ClothChange;
import trueseam.cloth.need.ClothNeed;
import trueseam.cloth.need.Needed;
import trueseam.cloth.need.WidthNeed;
import trueseam.cloth.proof.LayFault;
import trueseam.cloth.proof.LayProof;
import trueseam.garment.pattern.Pattern;
import trueseam.worktable.project.ClothPart.Lengths;
import trueseam.worktable.project.ClothPart.Width;

/**
 * One search for a short layout, and after it for the lengths of other widths. Runs in a thread of {@link Searches}; asked, stopped and watched
 * by those of the server.
 */
final class Search implements Runnable {

    /** A page that does not ask for so long is not looked at any more, even by a browser that lets hidden pages ask once a minute only. */
    private static final long LEFT_NS = 90_000_000_000L;

    /** However slow the machine, it ends. */
    private static final long LONGEST_NS = 900_000_000_000L;

    /** What is searched for, and for whom. */
    record Order(String project, String task, Plan plan, boolean lengthsKnown, Keeping keeping) {}

    /** Keeps what was found with the project. */
    interface Keeping {

        /** A layout, after so many rounds; false where the project is another by now, so that nothing was kept. */
        boolean layout(Lay lay, int rounds);

        void lengths(Lengths lengths);

        /** Whether the project is there and its cloth is the same as when the search began. */
        boolean isWanted();

        /** The version of the project that was kept last; 0: none yet. */
        long version();
    }

    /** How far it is. */
    enum Stage {
        WAITING,
        SEARCHING,
        WIDTHS,
        ORIGINAL,
        ENDED
    }

    private final Order order;
    private final long ordered = System.nanoTime();
    private final List<Lay> found = new ArrayList<>();
    private volatile Stage stage = Stage.WAITING;
    private volatile int done;
    private volatile boolean stopped;
    private volatile boolean dropped;
    private volatile long asked = System.nanoTime();
    private volatile String problem = "";

    Search(Order order) {
        this.order = order;
    }

    @Override
    public void run() {
        try {
            if (!isOver()) {
                stage = Stage.SEARCHING;
                layout();
            }
            if (!isOver() && !order.lengthsKnown()) {
                lengths();
            }
        } catch (LayException e) {
            problem = e.place() + ": " + e.getMessage();
        } catch (RuntimeException e) {
            LoggerFactory.getLogger(Search.class).error("A search on cloth failed", e);
            problem = "The search failed at this (" + e.getClass().getSimpleName()
                    + "); what you laid by hand is as it was. Change something, or search again from another seed.";
        } finally {
            stage = Stage.ENDED;
        }
    }

    private void layout() {
        ClothChoices choices = order.plan().choices();
        Lay best = order.plan().laying().search(choices.seed(), this::spent, f -> add(f.lay()));
        if (!dropped) {
            order.keeping().layout(best, done);
        }
    }

    private double spent(int rounds) {
        done = rounds;
        return isOver() || !order.keeping().isWanted()
                ? 1
                : (double) rounds / order.plan().choices().rounds();
    }

    private boolean isOver() {
        long now = System.nanoTime();
        return stopped || now - asked > LEFT_NS || now - ordered > LONGEST_NS;
    }

    /** Shown only if it passes the test of other geometry; what is wrong between pieces that lie there by hand is hers. */
    private void add(Lay lay) {
        for (LayFault fault : LayProof.look(lay)) {
            if (!fault.pieces().stream().allMatch(i -> lay.byHand(lay.pieces().get(i)))) {
                throw new IllegalStateException("the layout does not pass its own test: " + fault);
            }
        }
        synchronized (found) {
            found.add(lay);
        }
    }

    private void lengths() {
        stage = Stage.WIDTHS;
        Plan plan = order.plan();
        Lay lay = plan.lay();
        List<Width> widths = new ArrayList<>();
        done = 0;
        for (double width : ClothNeed.USUAL_WIDTHS_MM) {
            if (isOver()) {
                return;
            }
            ClothNeed.in(
                            plan.pattern(),
                            lay.cloth(),
                            lay.stuff(),
                            lay.wishes(),
                            List.of(width),
                            plan.choices().seed(),
                            ClothNeed.USUAL_ROUNDS)
                    .forEach(need -> widths.add(width(need)));
            done = widths.size();
        }
        stage = Stage.ORIGINAL;
        Optional<ClothChange> change = plan.original().flatMap(original -> change(original, plan.pattern(), lay));
        if (!dropped) {
            order.keeping()
                    .lengths(new Lengths(
                            order.task(),
                            widths,
                            change.map(c -> width(c, c.before())).stream().toList(),
                            change.map(c -> width(c, c.after())).stream().toList()));
        }
    }

    /** Nothing where the original pieces do not go on the cloth. */
    private static Optional<ClothChange> change(Pattern original, Pattern altered, Lay lay) {
        try {
            return Optional.of(ClothChange.on(lay.cloth(), lay.stuff(), lay.wishes(), original, altered));
        } catch (LayException e) {
            return Optional.empty();
        }
    }

    private static Width width(ClothChange change, Needed needed) {
        return width(change.cloth().widthMm(), needed);
    }

    private static Width width(WidthNeed need) {
        return need.needed()
                .map(n -> width(need.widthMm(), n))
                .orElseGet(() -> new Width(need.widthMm(), 0, 0, 0, need.why()));
    }

    private static Width width(double widthMm, Needed n) {
        return new Width(widthMm, n.neededMm(), n.toBuyMm(), n.density(), "");
    }

    Order order() {
        return order;
    }

    /** Somebody looks at it. */
    void touch() {
        asked = System.nanoTime();
    }

    /** Ends it; the best so far is kept. */
    void stop() {
        stopped = true;
    }

    /** Ends it; nothing more is kept. */
    void drop() {
        dropped = true;
        stopped = true;
    }

    /** It never had its turn. */
    void end() {
        stage = Stage.ENDED;
    }

    boolean isStopped() {
        return stopped;
    }

    Stage stage() {
        return stage;
    }

    boolean isRunning() {
        return stage != Stage.ENDED;
    }

    /** Rounds searched, or widths worked out. */
    int done() {
        return done;
    }

    String problem() {
        return problem;
    }

    /** How many layouts were found, each shorter than the one before. */
    int layouts() {
        synchronized (found) {
            return found.size();
        }
    }

    /** One of them, counted from 1. */
    Optional<Lay> layout(int number) {
        synchronized (found) {
            return 1 <= number && number <= found.size() ? Optional.of(found.get(number - 1)) : Optional.empty();
        }
    }
}
