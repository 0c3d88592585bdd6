package trueseam.worktable.page;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import trueseam.intake.body.EntryRules;
import trueseam.worktable.project.ChangedElsewhereException;
import trueseam.worktable.project.ClothPart;
import trueseam.worktable.project.Kept;
import trueseam.worktable.project.Project;
import trueseam.worktable.project.Shelf;
import trueseam.worktable.work.Workings;

/** What all screens share: the shelf with the projects, and what was worked out of them lately. Safe for use by several threads. */
public final class Desk {

    /** Undo, redo and a few open projects find their workings again. */
    private static final int WORKINGS_AT_HAND = 24;

    private final Supplier<Shelf> shelf;
    private final EntryRules rules = EntryRules.usual();
    private final Map<Project, Workings> lately = Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Project, Workings> eldest) {
            return size() > WORKINGS_AT_HAND;
        }
    });
    /** Which tab made which version of a project. */
    private final Map<String, Map<Long, String>> writers = new ConcurrentHashMap<>();

    /**
     * A desk over a shelf that may still be being opened while the server starts.
     *
     * @param shelf gives the shelf, always the same one; waits until it is open
     */
    public Desk(Supplier<Shelf> shelf) {
        this.shelf = shelf;
    }

    /**
     * The shelf.
     *
     * @return where projects are kept
     */
    public Shelf shelf() {
        return shelf.get();
    }

    /**
     * What is plausible for a body.
     *
     * @return the rules
     */
    public EntryRules rules() {
        return rules;
    }

    /**
     * The workings of a project. How its pieces lie on cloth changes nothing of them, so that laying by hand need not wait for a fit.
     *
     * @param project the project
     * @return its workings without cloth, the same ones as before if it was asked lately
     */
    public Workings workings(Project project) {
        return lately.computeIfAbsent(
                project.with(ClothPart.empty()),
                p -> new Workings(p, shelf()::bytes, rules, LocalDate.now(ZoneId.systemDefault())));
    }

    /**
     * Changes a project. A tab that is quicker than its answers may build on its own changes; what another tab did in between refuses
     * the change.
     *
     * @param id the project's mark
     * @param version the version that the tab shows
     * @param tab the tab's own mark
     * @param how the change
     * @return what is kept now
     * @throws ChangedElsewhereException if another tab changed it meanwhile
     */
    public synchronized Kept change(String id, long version, String tab, UnaryOperator<Kept> how) {
        long now = shelf().lastSeenVersion(id);
        Map<Long, String> by = writers.computeIfAbsent(id, k -> new TreeMap<>());
        for (long v = version + 1; v <= now; v++) {
            if (tab.isEmpty() || !tab.equals(by.get(v))) {
                throw new ChangedElsewhereException(now);
            }
        }
        if (version > now) {
            throw new ChangedElsewhereException(now);
        }
        Kept changed = shelf().change(id, now, how);
        if (changed.version() != now) {
            by.put(changed.version(), tab);
        }
        return changed;
    }
}
