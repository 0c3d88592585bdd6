package trueseam.worktable.project;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Optional;
import trueseam.records.RecordBook;

/**
 * The data folder of a running program: the lock that keeps other programs out, the secret that tells our pages from other people's, and,
 * where no server is named, the record book itself. One running program at a time has the folder.
 */
public final class DataFolder implements AutoCloseable {

    private static final String RECORD_BOOK = "record-book.sqlite";

    private final Path folder;
    private final FileChannel lock;

    private DataFolder(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * Takes the data folder into use.
     *
     * @param folder the folder; it is made if it is not there
     * @return the folder
     * @throws ShelfException if it cannot be written, or another running program has it
     */
    public static DataFolder open(Path folder) {
        try {
            Files.createDirectories(folder);
            FileChannel lock =
                    FileChannel.open(folder.resolve("in-use"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!locked(lock)) {
                lock.close();
                throw new ShelfException(
                        "The data folder " + folder + " is in use by another running Trueseam; use that one, close it,"
                                + " or name another folder with --data.",
                        null);
            }
            return new DataFolder(folder, lock);
        } catch (IOException e) {
            throw new ShelfException(
                    "The data folder " + folder + " cannot be used (" + e.getMessage()
                            + "); name a folder that can be written with --data.",
                    e);
        }
    }

    private static boolean locked(FileChannel lock) throws IOException {
        try {
            return lock.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false; // by this very process, in tests
        }
    }

    /**
     * Opens the record book: the file in this folder, or where the setting says. Projects that an earlier version of the program kept as
     * files of this folder are taken over into it.
     *
     * @param setting a path or the address of a database; empty: the file in this folder
     * @param password the password at the server, if it needs one that is not in the address
     * @param clock what time it is
     * @return the record book
     */
    public RecordBook recordBook(Optional<String> setting, Optional<String> password, Clock clock) {
        RecordBook book = RecordBook.open(
                setting.orElseGet(() -> folder.resolve(RECORD_BOOK).toString()), password, clock);
        new Takeover(folder, new Shelf(book.drawer(RecordBook.SINGLE_OWNER))).run();
        return book;
    }

    /**
     * A secret of this data folder, for telling our own pages from other people's.
     *
     * @return the secret; the same after a new start, so that an open page goes on working
     */
    public String secret() {
        Path secret = folder.resolve("secret");
        try {
            if (!Files.exists(secret)) {
                byte[] bytes = new byte[16];
                new SecureRandom().nextBytes(bytes);
                Path beside = folder.resolve("secret.new");
                Files.writeString(beside, HexFormat.of().formatHex(bytes));
                Files.move(beside, secret, StandardCopyOption.ATOMIC_MOVE);
            }
            return Files.readString(secret);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    static ShelfException unreadable(IOException e) {
        return new ShelfException("The data folder cannot be read (" + e.getMessage() + ").", e);
    }

    @Override
    public void close() {
        try {
            lock.close();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }
}
