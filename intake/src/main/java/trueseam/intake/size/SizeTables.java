package trueseam.intake.size;

import java.util.List;
import java.util.Locale;
import trueseam.garment.size.SizeTable;
import trueseam.intake.sheet.Resources;

/** The size tables that ship with the program. Each says where its numbers come from and how far to trust them. */
public final class SizeTables {
    private static final List<String> FILES =
            List.of("misses.csv", "women.csv", "miss-petite.csv", "misses-astm-size-10.csv", "men-survey.csv");

    private SizeTables() {}

    /** Read once, when the first is asked for: every fitting asks for one by name. */
    private static final class Read {
        private static final List<SizeTable> ALL = FILES.stream()
                .map(file -> SizeTableCsv.read(Resources.sheet(SizeTables.class, file)))
                .toList();

        private Read() {}
    }

    /**
     * Every table that ships with the program.
     *
     * @return the tables: misses, women, miss petite, one size of a standard, and men from the survey
     */
    public static List<SizeTable> builtIn() {
        return Read.ALL;
    }

    /**
     * Finds a table that ships with the program by its name.
     *
     * @param name such as {@code misses}; case and what stands in brackets do not matter, so {@code men} finds
     *     {@code men (from survey)}
     * @return the table
     * @throws UnknownTableException naming the tables there are
     */
    public static SizeTable named(String name) {
        List<SizeTable> tables = builtIn();
        return tables.stream()
                .filter(table -> bare(table.name()).equals(bare(name)))
                .findFirst()
                .orElseThrow(() -> new UnknownTableException(
                        name, tables.stream().map(SizeTable::name).toList()));
    }

    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("\\(.*?\\)", "")
                .replaceAll("[ '-]+", " ")
                .strip();
    }
}
