package trueseam.intake.body;

/** A word of an entry is not one that its column can hold. */
final class EntryException extends RuntimeException {
    private final String column;
    private final String written;

    EntryException(String column, String written, String expected, Throwable cause) {
        super("\"" + written + "\" is not a " + column + ": " + expected + ".", cause);
        this.column = column;
        this.written = written;
    }

    String column() {
        return column;
    }

    String written() {
        return written;
    }
}
