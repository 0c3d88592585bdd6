package trueseam.worktable.work;

/** What was chosen does not go together. */
public final class WorkException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * What is wrong.
     *
     * @param sentence one sentence for the user
     * @param cause what the engine said
     */
    public WorkException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
