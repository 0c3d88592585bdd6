package trueseam.app.input;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text whose columns line up. The last column is not padded. */
public final class Columns {

    private final List<List<String>> rows = new ArrayList<>();

    /**
     * Begins a table.
     *
     * @param header the names of its columns
     */
    public Columns(String... header) {
        rows.add(List.of(header));
    }

    /**
     * Adds a row.
     *
     * @param cells as many as there are columns
     * @return this table
     */
    public Columns row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /**
     * The text.
     *
     * @return one line a row
     */
    public String text() {
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], row.get(i).length());
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                line.append(row.get(i));
                line.append(
                        " ".repeat(i == columns - 1 ? 0 : width[i] - row.get(i).length() + 2));
            }
            text.append(line.toString().stripTrailing()).append(System.lineSeparator());
        }
        return text.toString();
    }
}
