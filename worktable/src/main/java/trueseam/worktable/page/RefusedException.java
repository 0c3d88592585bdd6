package trueseam.worktable;

/** A request that does not come from one of our own pages. */
final class RefusedException extends RuntimeException {

    private static final long serialVersionUID = 1;

    RefusedException(String sentence) {
        super(sentence);
    }
}
