package trueseam.records.trouble;

/** Somebody else changed it since it was read; the change was not made. */
public final class OutdatedException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * The change was not made.
     *
     * @param what what was to be changed, such as "person"
     */
    public OutdatedException(String what) {
        super("This " + what + " was changed elsewhere in the meantime, or deleted, so your change was not made;"
                + " look at what is there now, then make it again.");
    }
}
