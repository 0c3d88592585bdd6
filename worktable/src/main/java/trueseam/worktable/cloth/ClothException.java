package trueseam.worktable.cloth;

/** What was asked of the Cloth screen cannot be; the sentence is for whoever asked. */
final class ClothException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ClothException(String sentence) {
        super(sentence);
    }

    ClothException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
