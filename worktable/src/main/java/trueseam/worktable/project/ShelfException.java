package trueseam.worktable.project;

/** The data folder cannot be read or written; nothing was changed. */
public final class ShelfException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * What is wrong.
     *
     * @param sentence one sentence for the user
     * @param cause what the machine said
     */
    public ShelfException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
