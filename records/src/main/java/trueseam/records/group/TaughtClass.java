package trueseam.records.group;

import java.util.List;
import trueseam.records.account.Account;

/**
 * A class that a teacher leads.
 *
 * @param id its mark
 * @param name what it is called
 * @param students who is in it, by name
 */
public record TaughtClass(String id, String name, List<Account> students) {

    /** Does not change. */
    public TaughtClass {
        students = List.copyOf(students);
    }
}
