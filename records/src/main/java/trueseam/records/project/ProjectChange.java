package trueseam.records.project;

import java.util.List;

/**
 * A change of a project from one version to a later one.
 *
 * @param project the project's mark
 * @param from the version that was changed
 * @param to the version that it has then
 * @param head what it is about then
 * @param state the number of the state that is the present one then
 * @param dropped numbers of states that are not kept any more
 * @param added new states
 */
public record ProjectChange(
        String project,
        long from,
        long to,
        KeptProject.Head head,
        long state,
        List<Long> dropped,
        List<ProjectState> added) {

    /** Does not change. */
    public ProjectChange {
        if (to <= from) {
            throw new IllegalArgumentException("version " + to + " is not after " + from);
        }
        dropped = List.copyOf(dropped);
        added = List.copyOf(added);
    }
}
