package trueseam.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How long the saves of one kind took, as a line of a table. The first seconds, in which Java is still cold, have a line of their own.
 *
 * @param coldNs the saves that were due in the first seconds, nanoseconds each from the moment at which it was due
 * @param warmNs those after
 * @param refused how many were refused because another was quicker, and made again
 */
record SaveTimes(List<Long> coldNs, List<Long> warmNs, int refused) {

    SaveTimes {
        coldNs = List.copyOf(coldNs);
        warmNs = List.copyOf(warmNs);
    }

    /** Lets all sessions work at once, each on a thread of its own, and waits for them. */
    static <T> List<T> together(List<Callable<T>> sessions) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(sessions.size());
        try {
            List<T> done = new ArrayList<>();
            for (Future<T> one : threads.invokeAll(sessions)) {
                done.add(one.get());
            }
            return done;
        } finally {
            threads.shutdownNow();
        }
    }

    /** Those of several sessions as one. */
    static SaveTimes of(List<SaveTimes> sessions) {
        return new SaveTimes(
                sessions.stream().flatMap(one -> one.coldNs().stream()).toList(),
                sessions.stream().flatMap(one -> one.warmNs().stream()).toList(),
                sessions.stream().mapToInt(SaveTimes::refused).sum());
    }

    int saves() {
        return coldNs.size() + warmNs.size();
    }

    /** Two lines, cold and warm; what was lost belongs to both and stands in the second. */
    void print(String what, int lost) {
        line(what + ", first seconds", coldNs, "", "");
        line(what, warmNs, Integer.toString(lost), Integer.toString(refused));
    }

    private static void line(String what, List<Long> tookNs, String lost, String refused) {
        if (tookNs.isEmpty()) {
            return;
        }
        List<Long> sorted = tookNs.stream().sorted().toList();
        System.out.println(String.format(
                Locale.ROOT,
                "%-44s %7d %6s %8s %8.0f %8.0f %8.0f %8.0f",
                what,
                sorted.size(),
                lost,
                refused,
                ms(sorted, 0.5),
                ms(sorted, 0.95),
                ms(sorted, 0.99),
                ms(sorted, 1)));
    }

    /** The smallest time that at least this share of the saves kept within. */
    private static double ms(List<Long> sorted, double share) {
        return sorted.get((int) Math.max(0, Math.ceil(share * sorted.size()) - 1)) / 1e6;
    }
}
