package trueseam.records;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import trueseam.records.account.Accounts;
import trueseam.records.internal.Database;
import trueseam.records.internal.Rows;
import trueseam.records.trouble.RecordBookException;

/**
 * An open record book. In a file it has one writer and no set-up; at a server it has as many as come. Every change is on disk before the
 * call returns. Safe for use by several threads.
 */
public final class RecordBook implements AutoCloseable {

    /** Who uses the program alone. */
    public static final long SINGLE_OWNER = Accounts.FIRST;

    private static final String SERVER = "jdbc:postgresql:";

    private final Database database;
    private final Clock clock;

    private RecordBook(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * Opens a record book by one setting.
     *
     * @param setting the address of a PostgreSQL database, {@code jdbc:postgresql://...}, or else the path of a file; it is made if it
     *     is not there
     * @param password the password at the server; none if the address has it, or the server needs none
     * @param clock what time it is
     * @return the record book, its tables brought up to date
     * @throws RecordBookException if it cannot be opened
     */
    public static RecordBook open(String setting, Optional<String> password, Clock clock) {
        return setting.startsWith(SERVER)
                ? new RecordBook(Database.atServer(setting, password), clock)
                : inFile(Path.of(setting), clock);
    }

    /**
     * Opens a record book in a file.
     *
     * @param file the file; it is made if it is not there
     * @param clock what time it is
     * @return the record book, its tables brought up to date
     * @throws RecordBookException if it cannot be opened
     */
    public static RecordBook inFile(Path file, Clock clock) {
        return new RecordBook(Database.inFile(file, Optional.empty()), clock);
    }

    /**
     * Opens a record book in a file that may not grow beyond a size.
     *
     * @param file the file
     * @param clock what time it is
     * @param mostPages pages of 4096 bytes
     * @return the record book
     */
    static RecordBook inFileOfAtMost(Path file, Clock clock, int mostPages) {
        return new RecordBook(Database.inFile(file, Optional.of(mostPages)), clock);
    }

    /**
     * What one owner has in the record book. Nothing in it reaches anybody else's rows.
     *
     * @param owner the owner's account; {@link #SINGLE_OWNER} for who uses the program alone
     * @return the drawer
     */
    public Drawer drawer(long owner) {
        return new Drawer(new Rows(database, owner, clock));
    }

    /**
     * Accounts and sessions, for a studio or a school.
     *
     * @return what belongs to no single account
     */
    public Studio studio() {
        return new Studio(database, clock);
    }

    /**
     * Where the record book is, for a sentence; without any password.
     *
     * @return the file, or the server's address
     */
    public String where() {
        return database.where();
    }

    @Override
    public void close() {
        database.close();
    }
}
