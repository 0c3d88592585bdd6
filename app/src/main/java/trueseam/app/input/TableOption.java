package trueseam.app.input;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTableCsv;
import trueseam.intake.size.SizeTables;

/** {@code --table}: a size table that ships with the program, or the user's own CSV. */
public final class TableOption {

    @Option(
            names = "--table",
            paramLabel = "NAME|FILE",
            description = "The size table: misses, women, miss petite, men, or a CSV file of your own.")
    private String table;

    /** For the command line. */
    public TableOption() {}

    /**
     * The table that was named.
     *
     * @return the table, or nothing if none was named
     */
    public Optional<SizeTable> named() {
        return Optional.ofNullable(table).map(TableOption::read);
    }

    /**
     * Reads a table.
     *
     * @param name a name or a file
     * @return the table
     */
    public static SizeTable read(String name) {
        Path file = Path.of(name);
        if (name.endsWith(".csv") || Files.isRegularFile(file)) {
            return SizeTableCsv.read(file.getFileName().toString(), Texts.read(file));
        }
        return SizeTables.named(name);
    }
}
