package trueseam.worktable;

/** The worktable cannot be opened. */
public final class WorktableException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * What is wrong.
     *
     * @param sentence one sentence for the user
     * @param cause what the machine said
     */
    public WorktableException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
