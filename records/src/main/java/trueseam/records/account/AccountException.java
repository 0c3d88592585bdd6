package trueseam.records.account;

/** Something about an account is refused; nothing was changed. */
public final class AccountException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final boolean waiting;

    private AccountException(String sentence, boolean waiting) {
        super(sentence);
        this.waiting = waiting;
    }

    /**
     * It cannot be done like this.
     *
     * @param sentence one sentence for the user
     * @return what to throw
     */
    public static AccountException refused(String sentence) {
        return new AccountException(sentence, false);
    }

    /**
     * It was tried too often.
     *
     * @param sentence one sentence for the user
     * @return what to throw
     */
    public static AccountException wait(String sentence) {
        return new AccountException(sentence, true);
    }

    /**
     * Whether it may be tried again later.
     *
     * @return true if it was only tried too often
     */
    public boolean isWaiting() {
        return waiting;
    }
}
