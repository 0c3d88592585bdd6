package trueseam.records.account;

import java.util.List;
import java.util.Optional;

/** The accounts of a studio. It asks nobody what he may: who calls it does. Safe for use by several threads. */
public interface Accounts {

    /** The account that the tables begin with: an owner's. */
    long FIRST = 1;

    /** Shorter passwords are guessed; NIST SP 800-63B asks for 8 at least, and 12 costs a phrase nothing. */
    int SHORTEST_PASSWORD = 12;

    /**
     * All accounts.
     *
     * @return by name
     */
    List<Account> list();

    /**
     * One account.
     *
     * @param id its number
     * @return the account, if there is one
     */
    Optional<Account> find(long id);

    /**
     * Makes an account that nobody can sign in with yet.
     *
     * @param name what she is called
     * @param role what she may do
     * @return the account
     * @throws AccountException if the name is empty or too long
     */
    Account add(String name, Role role);

    /**
     * Makes an invitation to set a password, for a new account or where the password was lost. Earlier ones of the account end.
     *
     * @param account its number
     * @return what goes into the link; it cannot be read again, is good for one use and for seven days
     * @throws AccountException if there is no such account or it is closed
     */
    String invite(long account);

    /**
     * Whom an invitation is for.
     *
     * @param token what stood in the link
     * @return the account, if the invitation is still good
     */
    Optional<Account> invited(String token);

    /**
     * Takes an invitation: sets name and password. Whatever was signed in on the account is signed out.
     *
     * @param token what stood in the link
     * @param name what she is called
     * @param signIn the name that she will sign in with
     * @param password the password, {@link #SHORTEST_PASSWORD} characters at least
     * @return the account
     * @throws AccountException if the invitation is not good any more, the sign-in name is taken, or one of them is too short or long
     */
    Account enter(String token, String name, String signIn, String password);

    /**
     * Closes an account, signing it out everywhere, or opens it again. Its rows stay.
     *
     * @param account its number
     * @param closed whether it is closed
     * @throws AccountException if it is the only owner that is open
     */
    void close(long account, boolean closed);

    /**
     * Whether somebody can sign in as owner.
     *
     * @return false before the first owner has set a password
     */
    boolean hasOwner();

    /**
     * Erases an account with everything of hers for good: people, days, patterns, projects, files, fits, sittings, classes, shares and
     * sessions. Its number stays, as the trails of others name it, and one line in a trail that it was erased; no name does.
     *
     * @param account its number
     * @param by who erases it
     * @throws AccountException if there is no such account, or it is the only owner that is open
     */
    void erase(long account, long by);

    /**
     * When accounts were erased.
     *
     * @return milliseconds since 1970, the latest first
     */
    List<Long> erased();
}
