package trueseam.worktable.cloth;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** The searches that run at present: one for a project, and so many at once as the machine has pairs of cores. Safe for several threads. */
public final class Searches implements AutoCloseable {

    /** As many may wait for their turn: a school class. */
    private static final int WAITING = 40;

    /** What the last searches found can be asked for so long. */
    private static final int AT_HAND = 64;

    private static final long CLOSING_SECONDS = 10;

    private final ThreadPoolExecutor threads;
    private final Map<String, Search> ofProject = Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Search> eldest) {
            return size() > AT_HAND && !eldest.getValue().isRunning();
        }
    });

    /**
     * None yet.
     *
     * @param atOnce how many may run at once; each takes two cores
     */
    public Searches(int atOnce) {
        threads = new ThreadPoolExecutor(
                atOnce, atOnce, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(WAITING), work -> {
                    Thread thread = new Thread(work, "cloth");
                    thread.setDaemon(true);
                    return thread;
                });
        threads.allowCoreThreadTimeOut(true);
    }

    /**
     * For this machine.
     *
     * @return with one search at once for every two cores
     */
    public static Searches ofThisMachine() {
        return new Searches(Math.max(1, Runtime.getRuntime().availableProcessors() / 2));
    }

    /** Begins one; another one of the same project ends without being kept. */
    void begin(Search.Order order) {
        drop(order.project());
        Search search = new Search(order);
        try {
            threads.execute(search);
        } catch (RejectedExecutionException e) {
            throw new ClothException(
                    "So many others are searching that yours would wait too long; lay by hand, or search again in some minutes.",
                    e);
        }
        ofProject.put(order.project(), search);
    }

    /** The last one of a project, which may have ended. */
    Optional<Search> of(String project) {
        return Optional.ofNullable(ofProject.get(project));
    }

    /** Ends that of a project; nothing more of it is kept. */
    void drop(String project) {
        of(project).ifPresent(search -> {
            search.drop();
            leaveQueue(search);
        });
    }

    /** Ends that of a project; the best so far is kept. */
    void stop(String project) {
        of(project).ifPresent(search -> {
            search.stop();
            leaveQueue(search);
        });
    }

    private void leaveQueue(Search search) {
        if (threads.remove(search)) {
            search.end();
        }
    }

    /** Ends all; the best of each is kept. */
    @Override
    public void close() {
        ofProject.values().forEach(Search::stop);
        threads.shutdown();
        try {
            if (!threads.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS)) {
                ofProject.values().forEach(Search::drop);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
