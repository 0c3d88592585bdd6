package trueseam.records.group;

import java.util.List;
import java.util.Optional;

/**
 * What is shared between a student and the teachers of her classes: a person with all her projects, or one project, each with one class.
 * A teacher only looks. Safe for use by several threads.
 */
public interface Sharing {

    /**
     * All that is shared with this teacher.
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
     * The classes that this student is in.
     *
     * @return by name
     */
    List<JoinedClass> classes();

    /**
     * What this student shares.
     *
     * @return in no order
     */
    List<Share> shares();

    /**
     * Shares a person with all her projects with a class, or takes that back.
     *
     * @param taughtClass the mark of the class
     * @param person the person's mark
     * @param shared whether she is shared from now on
     * @return whether it is so now; false also where she is not this owner's, or the class not one that the owner is in
     */
    boolean person(String taughtClass, String person, boolean shared);

    /**
     * Shares one project with a class, or takes that back.
     *
     * @param taughtClass the mark of the class
     * @param project the project's mark
     * @param shared whether it is shared from now on
     * @return whether it is so now; false also where it is not this owner's, or the class not one that the owner is in
     */
    boolean project(String taughtClass, String project, boolean shared);
}
