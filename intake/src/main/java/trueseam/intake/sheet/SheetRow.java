package trueseam.intake.sheet;

import java.util.List;

/**
 * One line of a sheet.
 *
 * @param line where it starts in the file, from 1
 * @param cells its cells as written, without their quotes
 */
public record SheetRow(int line, List<String> cells) {

    /**
     * Keeps a copy of the cells.
     *
     * @param line as of the record
     * @param cells as of the record
     */
    public SheetRow {
        cells = List.copyOf(cells);
    }

    /**
     * One cell.
     *
     * @param column its place, from 0
     * @return the cell without blanks around it; empty when the line is shorter
     */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column).strip() : "";
    }
}
