package trueseam.records.group;

import java.util.List;
import java.util.Optional;

/** What the students of one teacher's classes share with her: the people whom they marked so, and the projects of these. */
public interface Sharing {

    /**
     * All that is shared.
     *
     * @return by student, the last changed first
     */
    List<SharedProject> list();

    /**
     * Whose project it is that is looked at.
     *
     * @param project its mark
     * @return the project with its owner, if it is shared with this teacher
     */
    Optional<SharedProject> find(String project);

    /**
     * The teachers who can see what this account shares.
     *
     * @return their names
     */
    List<String> teachers();
}
