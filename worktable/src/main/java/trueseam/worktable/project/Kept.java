package trueseam.worktable.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A project with all its earlier states.
 *
 * @param version goes up with every change, undoing too
 * @param at which of the states is the present one
 * @param states the states, the earliest first
 */
public record Kept(long version, int at, List<State> states) {

    /** So many states are kept for undoing; the file stays below a few megabytes. */
    private static final int MOST_STATES = 120;

    /**
     * One state.
     *
     * @param label what led to it, such as "Bust girth 38 in"
     * @param field what was typed into, so that going on typing is one change; empty: a change of its own
     * @param project the project then
     */
    public record State(String label, String field, Project project) {}

    /** The states do not change. */
    public Kept {
        states = List.copyOf(states);
        if (!(0 <= at && at < states.size())) {
            throw new IllegalArgumentException("state " + at + " of " + states.size());
        }
    }

    /**
     * A project that has just begun.
     *
     * @param project the project
     * @return with nothing to undo
     */
    public static Kept begun(Project project) {
        return new Kept(1, 0, List.of(new State("", "", project)));
    }

    /**
     * The present state.
     *
     * @return the project
     */
    public Project project() {
        return states.get(at).project();
    }

    /**
     * What undoing takes back.
     *
     * @return the label of the last change, if there is one
     */
    public Optional<String> undoable() {
        return at > 0 ? Optional.of(states.get(at).label()) : Optional.empty();
    }

    /**
     * What redoing brings back.
     *
     * @return the label of the change that was undone last, if there is one
     */
    public Optional<String> redoable() {
        return at + 1 < states.size() ? Optional.of(states.get(at + 1).label()) : Optional.empty();
    }

    /**
     * The project changed; what had been undone is forgotten.
     *
     * @param label what was done
     * @param field what was typed into, or empty
     * @param changed the project now
     * @return with one more change to undo, or the last one grown if the same field is typed into again
     */
    public Kept changed(String label, String field, Project changed) {
        if (changed.equals(project())) {
            return this;
        }
        List<State> kept = new ArrayList<>(states.subList(0, at + 1));
        boolean goesOn = at > 0 && !field.isEmpty() && states.get(at).field().equals(field) && at + 1 == states.size();
        if (goesOn) {
            kept.remove(at);
        }
        kept.add(new State(label, field, changed));
        while (kept.size() > MOST_STATES) {
            kept.remove(0);
        }
        return new Kept(version + 1, kept.size() - 1, kept);
    }

    /**
     * The last change taken back.
     *
     * @return the same if there is none
     */
    public Kept undone() {
        return at == 0 ? this : new Kept(version + 1, at - 1, states);
    }

    /**
     * The change that was undone last brought back.
     *
     * @return the same if there is none
     */
    public Kept redone() {
        return at + 1 == states.size() ? this : new Kept(version + 1, at + 1, states);
    }
}
