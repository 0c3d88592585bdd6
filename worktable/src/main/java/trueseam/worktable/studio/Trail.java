package trueseam.worktable.studio;

import java.time.Clock;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import trueseam.records.Drawer;

/**
 * Writes down who looked at or worked on whose measures, before they are shown. Whoever goes on with the same project or page within {@link
 * #WHILE} is written down once: a line for each of her requests would bury the others and cost a write to the disk each. What is taken
 * away or erased is always written down, by the record book itself. Safe for use by several threads.
 */
final class Trail {

    /** Longer than the pause between two readings with the tape, shorter than a lesson. */
    static final Duration WHILE = Duration.ofMinutes(10);

    /** A school's people with some projects each; who falls out is written down once more. */
    private static final int AT_HAND = 4_096;

    private record Doing(long who, long owner, String about, String what) {}

    private final Clock clock;
    private final Map<Doing, Long> written = Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Doing, Long> eldest) {
            return size() > AT_HAND;
        }
    });

    Trail(Clock clock) {
        this.clock = clock;
    }

    /**
     * Notes a doing.
     *
     * @param drawer whose person it is
     * @param who the account that looks or works
     * @param person the person's mark
     * @param about the mark of the project or person whose pages are open
     * @param what what is done, such as {@code looked at a project}
     */
    void note(Drawer drawer, long who, String person, String about, String what) {
        Doing doing = new Doing(who, drawer.owner(), about, what);
        long now = clock.millis();
        Long last = written.get(doing);
        if (last == null || now - last >= WHILE.toMillis()) {
            drawer.trail().note(who, person, what);
            written.put(doing, now); // only what stands in the record book counts as written
        }
    }
}
