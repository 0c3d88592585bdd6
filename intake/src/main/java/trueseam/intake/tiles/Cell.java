package trueseam.intake.tiles;

/**
 * A place in the grid.
 *
 * @param row counted from the top
 * @param column counted from the left
 */
record Cell(int row, int column) {

    Cell plus(int rows, int columns) {
        return new Cell(row + rows, column + columns);
    }
}
