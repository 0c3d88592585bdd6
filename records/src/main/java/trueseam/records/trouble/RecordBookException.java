package trueseam.records.trouble;

/** The record book could not be read or written; nothing was half-written. */
public final class RecordBookException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final Trouble trouble;

    /**
     * What is wrong.
     *
     * @param trouble which kind it is
     * @param sentence one sentence for the user
     * @param cause what the database said
     */
    public RecordBookException(Trouble trouble, String sentence, Throwable cause) {
        super(sentence, cause);
        this.trouble = trouble;
    }

    /**
     * Which kind of trouble it is.
     *
     * @return the kind
     */
    public Trouble trouble() {
        return trouble;
    }
}
