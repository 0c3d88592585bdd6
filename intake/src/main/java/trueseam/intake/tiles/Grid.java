package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which page lies where.
 *
 * @param cells the place of each leaf by its index; a leaf without a place lies nowhere
 * @param how in words, how it was known
 */
record Grid(Map<Integer, Cell> cells, String how) {

    /** Two leaves that lie side by side, or one below the other. */
    record Pair(int first, int second) {}

    Grid {
        cells = new TreeMap<>(cells);
    }

    /** With rows and columns counted from 0. */
    static Grid of(Map<Integer, Cell> cells, String how) {
        int row = cells.values().stream().mapToInt(Cell::row).min().orElse(0);
        int column = cells.values().stream().mapToInt(Cell::column).min().orElse(0);
        Map<Integer, Cell> moved = new HashMap<>();
        cells.forEach((leaf, cell) -> moved.put(leaf, cell.plus(-row, -column)));
        return new Grid(moved, how);
    }

    /** In the order of the file, row by row or column by column. */
    static Grid inOrder(int leaves, int wide, boolean byRow) {
        Map<Integer, Cell> cells = new HashMap<>();
        for (int i = 0; i < leaves; i++) {
            cells.put(i, byRow ? new Cell(i / wide, i % wide) : new Cell(i % wide, i / wide));
        }
        return new Grid(cells, "in the order of the file, " + (byRow ? "row by row" : "column by column"));
    }

    boolean isProper() {
        return !cells.isEmpty() && cells.values().stream().distinct().count() == cells.size();
    }

    int rows() {
        return cells.values().stream().mapToInt(Cell::row).max().orElse(-1) + 1;
    }

    int columns() {
        return cells.values().stream().mapToInt(Cell::column).max().orElse(-1) + 1;
    }

    Grid turned() {
        return changed(c -> new Cell(/* row= */ c.column(), /* column= */ c.row()));
    }

    Grid upsideDown() {
        int last = rows() - 1;
        return changed(c -> new Cell(last - c.row(), c.column()));
    }

    private Grid changed(java.util.function.UnaryOperator<Cell> change) {
        Map<Integer, Cell> changed = new HashMap<>();
        cells.forEach((leaf, cell) -> changed.put(leaf, change.apply(cell)));
        return new Grid(changed, how);
    }

    private Map<Cell, Integer> leaves() {
        Map<Cell, Integer> leaves = new LinkedHashMap<>();
        cells.forEach((leaf, cell) -> leaves.put(cell, leaf));
        return leaves;
    }

    /** All pairs whose second lies so many rows below and columns right of the first. */
    List<Pair> pairs(int rows, int columns) {
        Map<Cell, Integer> leaves = leaves();
        List<Pair> pairs = new ArrayList<>();
        leaves.forEach((cell, leaf) -> {
            Integer other = leaves.get(cell.plus(rows, columns));
            if (other != null) {
                pairs.add(new Pair(leaf, other));
            }
        });
        return pairs;
    }

    boolean has(Cell cell) {
        return cells.containsValue(cell);
    }
}
