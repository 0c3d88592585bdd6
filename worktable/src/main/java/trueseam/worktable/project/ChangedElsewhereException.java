package trueseam.worktable.project;

/** Somebody else, or another tab, changed the project since this page was shown. */
public final class ChangedElsewhereException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final long version;

    /**
     * The change was not made.
     *
     * @param version the present version
     */
    public ChangedElsewhereException(long version) {
        super("This project was changed in another tab or window, so your last change was not made here."
                + " Reload this page to see what is there now, then make it again.");
        this.version = version;
    }

    /**
     * The present version.
     *
     * @return the version
     */
    public long version() {
        return version;
    }
}
