package trueseam.records.person;

import java.util.List;
import java.util.Optional;
import trueseam.records.trouble.OutdatedException;

/** The people of one owner. Safe for use by several threads. */
public interface People {

    /**
     * People by what is looked for.
     *
     * @param text a part of label or note, in any case; empty: all
     * @param archivedToo whether those put away are among them
     * @return the last changed first
     */
    List<Person> list(String text, boolean archivedToo);

    /**
     * One person.
     *
     * @param id her mark
     * @return the person, if the owner has her
     */
    Optional<Person> find(String id);

    /**
     * Keeps a person who is not kept yet.
     *
     * @param person the person; mark, version and time are given here
     * @return the person as kept
     */
    Person add(Person person);

    /**
     * Changes a person.
     *
     * @param person the person, with the version that was changed
     * @return the person as kept now
     * @throws OutdatedException if she has another version or is gone
     */
    Person change(Person person);

    /**
     * Deletes a person for good, with her days, her projects and all that hangs on them, and the files that nothing else needs.
     *
     * @param id her mark
     * @return whether there was such a person
     */
    boolean erase(String id);
}
