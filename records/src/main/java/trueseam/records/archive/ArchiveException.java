package trueseam.records.archive;

/** An archive cannot be brought back; nothing of it was. */
public final class ArchiveException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * The archive is refused.
     *
     * @param reason what is wrong with it, as half a sentence
     */
    public ArchiveException(String reason) {
        super("This archive cannot be brought back: " + reason + "; nothing of it was taken.");
    }
}
