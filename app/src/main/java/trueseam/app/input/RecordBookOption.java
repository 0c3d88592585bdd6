package trueseam.app.input;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.records.RecordBook;

/** Where the record book is. */
public final class RecordBookOption {

    private static final String SERVER = "jdbc:";

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "The folder that everything is kept in. Default: trueseam in your folder for programs' data.")
    private Path data;

    @Option(
            names = "--record-book",
            paramLabel = "PLACE",
            description =
                    "Where people, patterns and fittings are kept: a file, or jdbc:postgresql://HOST/DATABASE?user=NAME."
                            + " Default: what TRUESEAM_RECORD_BOOK says, or a file in the data folder. A password is taken from"
                            + " TRUESEAM_RECORD_BOOK_PASSWORD or the file .pgpass, so that it does not show.")
    private String recordBook;

    /** For the command line. */
    public RecordBookOption() {}

    /**
     * The data folder.
     *
     * @return the one that was named, or the usual one
     */
    public Path folder() {
        return data == null ? usualFolder() : data;
    }

    /**
     * The record book that was named, here or by the machine's settings.
     *
     * @return a file or the address of a database; empty: the file in the data folder
     */
    public Optional<String> named() {
        return Optional.ofNullable(recordBook).or(() -> setting("TRUESEAM_RECORD_BOOK"));
    }

    /**
     * The password at the server.
     *
     * @return the password, if the machine's settings have one
     */
    public Optional<String> password() {
        return setting("TRUESEAM_RECORD_BOOK_PASSWORD");
    }

    /**
     * Opens a record book that has to be there.
     *
     * @return the record book
     * @throws InputException if there is none
     */
    public RecordBook open() {
        String place = place();
        if (!place.startsWith(SERVER) && !Files.isRegularFile(Path.of(place))) {
            throw new InputException(
                    "There is no record book at " + place + "; name one with --record-book or --data.");
        }
        return RecordBook.open(place, password(), Clock.systemUTC());
    }

    /**
     * Opens a record book, and begins it if it is not there.
     *
     * @return the record book
     */
    public RecordBook begin() {
        return RecordBook.open(place(), password(), Clock.systemUTC());
    }

    private String place() {
        return named().orElseGet(() -> folder().resolve("record-book.sqlite").toString());
    }

    private static Optional<String> setting(String name) {
        return Optional.ofNullable(System.getenv(name)).filter(value -> !value.isBlank());
    }

    private static Path usualFolder() {
        Path home = Path.of(System.getProperty("user.home"));
        String named = Optional.ofNullable(System.getenv("XDG_DATA_HOME")).orElse("");
        if (!named.isBlank()) {
            return Path.of(named, "trueseam");
        }
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            return home.resolve("AppData/Local/trueseam");
        }
        return system.contains("mac")
                ? home.resolve("Library/Application Support/trueseam")
                : home.resolve(".local/share/trueseam");
    }
}
