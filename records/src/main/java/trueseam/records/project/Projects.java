package trueseam.records.project;

import java.util.List;
import java.util.Optional;
import trueseam.records.trouble.OutdatedException;

/** The projects of one owner. Safe for use by several threads. */
public interface Projects {

    /**
     * Projects by what is looked for.
     *
     * @param sought what is looked for
     * @return the last changed first
     */
    List<KeptProject> list(Sought sought);

    /**
     * One project.
     *
     * @param id its mark
     * @return the project, if the owner has it
     */
    Optional<KeptProject> find(String id);

    /**
     * The states of a project.
     *
     * @param id its mark
     * @return in the order of their numbers; none if the owner has no such project
     */
    List<ProjectState> states(String id);

    /**
     * Begins a project.
     *
     * @param project the project's mark, its version and states; {@code from} is 0 and nothing is dropped
     */
    void begin(ProjectChange project);

    /**
     * Changes a project.
     *
     * @param change the change
     * @throws OutdatedException if it has another version, or is gone; nothing is changed then
     */
    void change(ProjectChange change);

    /**
     * Puts a project away, or takes it out again.
     *
     * @param id its mark
     * @param away whether it is put away
     * @return whether there is such a project
     */
    boolean archive(String id, boolean away);

    /**
     * Deletes a project for good, with its states, sittings, fits and prints, and the files that nothing else needs. The days on which
     * the person was measured stay with the person; a person of whom nothing was kept goes with her last project.
     *
     * @param id its mark
     * @return whether there was such a project
     */
    boolean delete(String id);
}
