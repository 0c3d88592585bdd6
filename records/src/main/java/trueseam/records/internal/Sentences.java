package trueseam.records.internal;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.sqlite.SQLiteException;
import trueseam.records.trouble.RecordBookException;
import trueseam.records.trouble.Trouble;

/** What a database says, as one sentence for the user. */
final class Sentences {

    private Sentences() {}

    /** While the record book is being opened. */
    static RecordBookException opening(String where, Exception said) {
        Trouble trouble = trouble(said);
        String sentence =
                switch (trouble) {
                    case NO_ROOM -> "There is no room to open the record book " + where + "; make room there.";
                    case NOT_REACHED ->
                        "The record book at " + where
                                + " does not answer; see whether the database is running, then start again.";
                    case FAILING -> "The disk with the record book " + where + " fails; see to it, then start again.";
                    case NOT_ALLOWED ->
                        "The record book " + where
                                + " may not be used from here; see that the file or folder can be written, or that user"
                                + " and password are right.";
                    case NOT_READABLE, REFUSED ->
                        "The record book " + where
                                + " is not one, or is damaged; name another one, or put a backup in its place.";
                    case BUSY ->
                        "The record book " + where + " is in use by another program; close that, then start again.";
                };
        return new RecordBookException(trouble, sentence, said);
    }

    /** While something is read or written. */
    static RecordBookException using(String where, Exception said) {
        Trouble trouble = trouble(said);
        String sentence =
                switch (trouble) {
                    case NO_ROOM ->
                        "There is no room left for the record book " + where
                                + ", so your last change was not made; make room there, then make it again.";
                    case NOT_REACHED ->
                        "The connection to the record book at " + where
                                + " was lost, so your last change may not have been made; see whether the database is"
                                + " running, then reload the page and look.";
                    case FAILING ->
                        "The disk with the record book " + where
                                + " fails, so your last change may not have been made; see to the disk, then reload the"
                                + " page and look.";
                    case NOT_ALLOWED ->
                        "The record book " + where
                                + " can only be read, so your last change was not made; see that it can be written, then"
                                + " make it again.";
                    case NOT_READABLE ->
                        "The record book " + where + " is damaged; end the program and put a backup in its place.";
                    case BUSY ->
                        "Somebody else was writing into the record book at the same moment, so your last change was not"
                                + " made; make it again.";
                    case REFUSED ->
                        "The record book refused your last change, so it was not made; this is a fault of the program.";
                };
        return new RecordBookException(trouble, sentence, said);
    }

    private static Trouble trouble(Throwable said) {
        for (Throwable one = said; one != null; one = one.getCause()) {
            if (one instanceof SQLiteException lite) {
                return ofFile(lite);
            }
        }
        for (Throwable one = said; one != null; one = one.getCause()) {
            if (one instanceof SQLException sql && sql.getSQLState() != null) {
                return ofServer(sql.getSQLState());
            }
        }
        for (Throwable one = said; one != null; one = one.getCause()) {
            if (one instanceof SQLTransientConnectionException && one.getCause() == null) {
                return Trouble.BUSY; // all connections were in use, and none was asked for anything
            }
            if (one instanceof SQLTransientConnectionException || one instanceof java.net.SocketException) {
                return Trouble.NOT_REACHED;
            }
            if (one instanceof java.io.IOException) {
                return Trouble.NOT_ALLOWED;
            }
        }
        return Trouble.REFUSED;
    }

    /** SQLite, Result and Error Codes: the lowest byte is the primary code. */
    private static Trouble ofFile(SQLiteException said) {
        return switch (said.getResultCode().code & 0xff) {
            case 13 -> Trouble.NO_ROOM; // SQLITE_FULL
            case 10 -> Trouble.FAILING; // SQLITE_IOERR
            case 3, 8, 14, 23 -> Trouble.NOT_ALLOWED; // PERM, READONLY, CANTOPEN, AUTH
            case 11, 26 -> Trouble.NOT_READABLE; // CORRUPT, NOTADB
            case 5, 6 -> Trouble.BUSY; // BUSY, LOCKED
            default -> Trouble.REFUSED;
        };
    }

    /** PostgreSQL documentation, appendix A, error codes by class. */
    private static Trouble ofServer(String state) {
        if (state.equals("53100")) {
            return Trouble.NO_ROOM;
        }
        if (state.startsWith("08") || state.startsWith("57P") || state.startsWith("53")) {
            return Trouble.NOT_REACHED;
        }
        if (state.startsWith("28") || state.startsWith("3D") || state.equals("42501") || state.equals("25006")) {
            return Trouble.NOT_ALLOWED;
        }
        if (state.startsWith("40") || state.equals("55P03")) {
            return Trouble.BUSY;
        }
        return state.startsWith("XX") ? Trouble.NOT_READABLE : Trouble.REFUSED;
    }
}
