package trueseam.records.account;

import java.util.Optional;

/** Who is signed in. Safe for use by several threads. */
public interface Sessions {

    /**
     * Signs in. The token is new every time, so that nobody can prepare one for somebody else.
     *
     * @param signIn the name
     * @param password the password
     * @param from the address that it comes from, for making many failures wait; it is kept only as a hash, for a quarter of an hour
     * @return the token of the session; it cannot be read again
     * @throws AccountException if name and password do not fit, which of the two is not said, or if it was tried too often
     */
    String begin(String signIn, String password, String from);

    /**
     * Whose session it is.
     *
     * @param token the token
     * @return the account, if the session was neither ended nor is too old and the account is open
     */
    Optional<Account> of(String token);

    /**
     * Signs out here.
     *
     * @param token the token
     */
    void end(String token);

    /**
     * Signs out everywhere.
     *
     * @param account the account's number
     */
    void endAll(long account);
}
