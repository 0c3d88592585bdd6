package trueseam.records.trouble;

/** The kinds of trouble with a record book. */
public enum Trouble {
    /** There is no room for what was to be written. */
    NO_ROOM,
    /** The database does not answer, or the connection to it was lost. */
    NOT_REACHED,
    /** The disk or folder that the file is on fails. */
    FAILING,
    /** It is there and may not be used: a wrong password, or a file that cannot be written. */
    NOT_ALLOWED,
    /** It is no record book, is damaged, or was made by a newer Trueseam. */
    NOT_READABLE,
    /** Somebody else was writing at the same moment. */
    BUSY,
    /** What was written does not fit with the rest; a fault of the program. */
    REFUSED
}
