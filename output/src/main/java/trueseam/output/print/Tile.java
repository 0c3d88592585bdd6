package trueseam.output.print;

import trueseam.geometry.Bounds;

/**
 * One page as a window of the large sheet.
 *
 * @param row counted from 0 at the top
 * @param column counted from 0 at the left
 * @param page its page in the file, counted from 1
 * @param window the paper, on the sheet
 * @param frame the part that is printed on, on the sheet
 * @param cell the part that is this page's own: up to the lines where it meets its neighbours
 */
public record Tile(int row, int column, int page, Bounds window, Bounds frame, Bounds cell) {

    private static final int LETTERS = 26;

    /**
     * Its label: a letter for the row and a number for the column.
     *
     * @return for example {@code B3}
     */
    public String label() {
        String letters = "";
        for (int r = row; r >= 0; r = r / LETTERS - 1) {
            letters = (char) ('A' + r % LETTERS) + letters;
        }
        return letters + (column + 1);
    }
}
