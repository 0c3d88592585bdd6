package trueseam.worktable.table;

/** The page asked for what is not on the table. */
final class TableException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** With a sentence for the user. */
    TableException(String sentence) {
        super(sentence);
    }
}
