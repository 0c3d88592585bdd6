package trueseam.records.access;

import java.util.List;
import java.util.Map;

/** The trail of access to the measures of one owner's people; it is only added to. Safe for use by several threads. */
public interface AccessTrail {

    /**
     * Writes down an access, now.
     *
     * @param account who
     * @param person the person's mark
     * @param what what was done, in one word
     */
    void note(long account, String person, String what);

    /**
     * Who had to do with a person's measures.
     *
     * @param person her mark
     * @return the latest first
     */
    List<Access> of(String person);

    /**
     * What those are called who stand in the trail of this owner's people.
     *
     * @return names by account
     */
    Map<Long, String> names();
}
