package trueseam.worktable;

/** More was sent than is read. */
final class TooLargeException extends RuntimeException {

    private static final long serialVersionUID = 1;

    TooLargeException(String sentence) {
        super(sentence);
    }
}
