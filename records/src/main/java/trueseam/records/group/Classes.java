package trueseam.records.group;

import java.util.List;
import trueseam.records.account.AccountException;

/** The classes that one teacher leads. Safe for use by several threads. */
public interface Classes {

    /**
     * Her classes.
     *
     * @return by name
     */
    List<TaughtClass> list();

    /**
     * Begins a class.
     *
     * @param name what it is called
     * @return its mark
     * @throws AccountException if the name is empty or too long
     */
    String begin(String name);

    /**
     * Takes a student in.
     *
     * @param id the class
     * @param student her account
     * @return whether it is one of this teacher's classes, and she is a student who was not in it
     */
    boolean add(String id, long student);

    /**
     * Lets a student go. What she shared is not seen any more, unless she is in another class.
     *
     * @param id the class
     * @param student her account
     * @return whether she was in it
     */
    boolean remove(String id, long student);

    /**
     * Ends a class.
     *
     * @param id the class
     * @return whether it was one of this teacher's
     */
    boolean end(String id);
}
