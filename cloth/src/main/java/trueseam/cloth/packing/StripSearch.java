package trueseam.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.function.Consumer;

/**
 * Searches for a short layout: several seekers at once, which from time to time hear how far the others are. Between two meetings each weighs
 * a fixed number of places, so that chance decides nothing: seed, number of seekers and number of rounds give the layout.
 */
public final class StripSearch {

    /** Places that a seeker weighs in its first round and at most: the first rounds are short, so that something is seen at once. */
    private static final long FIRST_ROUND = 20_000;

    private static final long LONGEST_ROUND = 1_000_000;

    /** From this part of the patience on what is found is only pressed together. */
    private static final double PRESS_FROM = 0.75;

    /** A seeker that is so much behind the best goes on from the best. */
    private static final double BEHIND = 0.002;

    private final Patience patience;
    private final Consumer<Progress> better;
    private final List<Seeker> seekers = new ArrayList<>();
    private final CyclicBarrier meeting;
    private long round = FIRST_ROUND;
    private int rounds;
    private volatile boolean over;
    private boolean pressing;
    private Arrangement.Snapshot best;
    private int bestOf;
    private RuntimeException failure;

    /**
     * How far a search is.
     *
     * @param rounds how many rounds were searched
     * @param layout the best layout so far
     */
    public record Progress(int rounds, StripLayout layout) {}

    private StripSearch(Strip strip, long seed, int seekers, Patience patience, Consumer<Progress> better) {
        this.patience = patience;
        this.better = better;
        Arrangement first = Arrangement.of(strip);
        for (int i = 0; i < seekers; i++) {
            this.seekers.add(new Seeker(i == 0 ? first : first.another(), seed + 0x9E3779B97F4A7C15L * i));
        }
        meeting = new CyclicBarrier(seekers, this::meet);
    }

    /**
     * Searches.
     *
     * @param strip the strip and what is to be laid on it
     * @param seed where chance begins
     * @param seekers how many search at once, one for each core
     * @param patience how long
     * @param better told the first layout at once, and each that is shorter than the one before
     * @return the shortest layout
     * @throws DoesNotFitException if a part is wider than the strip
     */
    public static StripLayout run(Strip strip, long seed, int seekers, Patience patience, Consumer<Progress> better) {
        return new StripSearch(strip, seed, seekers, patience, better).search();
    }

    private StripLayout search() {
        Seeker first = seekers.get(0);
        first.begin();
        best = first.best();
        better.accept(new Progress(0, first.layout()));
        for (Seeker s : seekers) {
            s.takeOver(best);
        }
        List<Thread> threads = new ArrayList<>();
        for (int i = 1; i < seekers.size(); i++) {
            int at = i;
            Thread thread = new Thread(() -> seek(at), "seeker " + i);
            thread.setDaemon(true);
            thread.start();
            threads.add(thread);
        }
        seek(0);
        for (Thread thread : threads) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                over = true;
            }
        }
        if (failure != null) {
            throw failure;
        }
        return seekers.get(bestOf).layoutOf(best);
    }

    private void seek(int at) {
        Seeker seeker = seekers.get(at);
        long[] due = {seeker.weighed() + round};
        try {
            while (!over) {
                boolean told = seeker.step(() -> {
                    if (!over && seeker.weighed() >= due[0]) {
                        pause();
                        due[0] = seeker.weighed() + round;
                    }
                    return over;
                });
                if (!told) {
                    Arrangement.Snapshot known = best;
                    if (known.length < seeker.best().length * (1 - (pressing ? 0 : BEHIND))) {
                        seeker.takeOver(known);
                    }
                    seeker.onlyPress(pressing);
                }
            }
        } catch (RuntimeException e) {
            fail(e);
        } finally {
            meeting.reset();
        }
    }

    private synchronized void fail(RuntimeException e) {
        over = true;
        failure = e;
    }

    private void pause() {
        try {
            meeting.await();
        } catch (BrokenBarrierException e) {
            over = true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            over = true;
        }
    }

    /** All seekers wait: what they know is put together. */
    private void meet() {
        rounds++;
        round = Math.min(LONGEST_ROUND, round * 2);
        boolean found = false;
        for (int i = 0; i < seekers.size(); i++) {
            if (seekers.get(i).best().length < best.length) {
                best = seekers.get(i).best();
                bestOf = i;
                found = true;
            }
        }
        if (found) {
            better.accept(new Progress(rounds, seekers.get(bestOf).layoutOf(best)));
        }
        double spent = patience.spent(rounds);
        pressing = spent >= PRESS_FROM;
        over |= spent >= 1;
    }
}
