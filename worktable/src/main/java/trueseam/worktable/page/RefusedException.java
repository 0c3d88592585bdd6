package trueseam.worktable.page;

/** A request that is not allowed: not from one of our own pages, or not for whoever asks. */
public final class RefusedException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * What is refused.
     *
     * @param sentence one sentence for the user
     */
    public RefusedException(String sentence) {
        super(sentence);
    }
}
