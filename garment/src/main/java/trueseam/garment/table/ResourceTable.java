package trueseam.garment.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table shipped beside a class: lines of cells parted by semicolons (so that sentences may hold commas), one header
 * line, lines that start with {@code #} are remarks. There is no quoting: these are our own files, checked when read.
 */
public final class ResourceTable {

    private ResourceTable() {}

    /**
     * Reads every row of a table.
     *
     * @param owner the class the table lies beside
     * @param name the file's name
     * @return for each row, cell by column name, in the order of the file; cells are stripped and may be empty
     * @throws IllegalStateException when the table is missing or a row has not as many cells as the header
     */
    public static List<Map<String, String>> read(Class<?> owner, String name) {
        List<String[]> lines = new ArrayList<>();
        for (String line : text(owner, name).lines().toList()) {
            if (!line.isBlank() && !line.startsWith("#")) {
                lines.add(line.split(";", -1));
            }
        }
        String[] header = lines.get(0);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String[] cells : lines.subList(1, lines.size())) {
            if (cells.length != header.length) {
                throw new IllegalStateException(name + ": " + header.length + " cells expected in " + cells[0]);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int column = 0; column < header.length; column++) {
                row.put(header[column].strip(), cells[column].strip());
            }
            rows.add(row);
        }
        return List.copyOf(rows);
    }

    private static String text(Class<?> owner, String name) {
        try (InputStream in = owner.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is missing beside " + owner.getName());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("table " + name + " cannot be read", e);
        }
    }
}
