package trueseam.worktable.project;

/** There is no project of that mark. */
public final class NoSuchProjectException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** For a page that is not there any more. */
    public NoSuchProjectException() {
        super("There is no such project; it may have been deleted. Choose one from the list.");
    }
}
