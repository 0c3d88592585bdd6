package trueseam.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/**
 * When each save is due: by the clock, whatever the one before took, so that a slow one makes the next ones late and is not hidden.
 *
 * @param beginNs when all begin, {@link System#nanoTime()}
 * @param warmNs from when on Java counts as warm
 * @param endNs when nothing is due any more
 * @param pauseNs from one save of a session to its next
 */
record Pace(long beginNs, long warmNs, long endNs, long pauseNs) {

    /** One save. */
    interface Save {
        /** Saves until it is taken, and says how often it was refused. */
        int made() throws Exception;

        /** What follows it and is not timed. */
        default void after() throws Exception {}
    }

    /** Begins now. */
    static Pace now(long coldSeconds, long seconds, long pauseMs) {
        long begin = System.nanoTime();
        long warm = begin + TimeUnit.SECONDS.toNanos(coldSeconds);
        return new Pace(begin, warm, warm + TimeUnit.SECONDS.toNanos(seconds), TimeUnit.MILLISECONDS.toNanos(pauseMs));
    }

    /** One session to its end; the seed shifts its beats against those of the others. */
    SaveTimes kept(long seed, Save save) throws Exception {
        List<Long> cold = new ArrayList<>();
        List<Long> warm = new ArrayList<>();
        int refused = 0;
        long due = beginNs + (long) (new Random(seed).nextDouble() * pauseNs);
        while (due < endNs) {
            TimeUnit.NANOSECONDS.sleep(Math.max(0, due - System.nanoTime()));
            refused += save.made();
            (due < warmNs ? cold : warm).add(System.nanoTime() - due);
            save.after();
            due += pauseNs;
        }
        return new SaveTimes(cold, warm, refused);
    }
}
