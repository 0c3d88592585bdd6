package trueseam.app.input;

/** Something on the command line or in a file that the user has to mend; the message is one sentence. */
public final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Says what to mend.
     *
     * @param sentence what, where, what was expected, what to do
     */
    public InputException(String sentence) {
        super(sentence);
    }
}
