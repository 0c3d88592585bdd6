package trueseam.output.sheet;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Point;
import trueseam.output.drawing.Align;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.Pen;

/**
 * A table that runs over pages: its head is set again on each. For one thread.
 *
 * <p>A cell may have two texts: the main one, and a smaller one below it.
 */
public final class SheetTable {

    private static final Lettering HEAD = Lettering.of(2.5).heavy();
    private static final Lettering MAIN = Lettering.of(2.75);
    private static final Lettering SMALL = Lettering.of(2.2).shaded(0.25);
    private static final Pen RULE = Pen.of(0.12).gray(0.7);
    private static final Pen HEAD_RULE = Pen.of(0.3);
    private static final double GAP_MM = 3.5;
    private static final double ABOVE_MM = 1.1;

    /**
     * A column.
     *
     * @param head what stands on top
     * @param share its part of the width, in proportion to the other columns
     * @param align where its cells begin
     */
    public record Column(String head, double share, Align align) {}

    /**
     * A cell.
     *
     * @param main its text
     * @param small a smaller text below, or empty
     * @param heavy whether the main text is heavier
     */
    public record Cell(String main, String small, boolean heavy) {

        /**
         * A cell with one text.
         *
         * @param main its text
         * @return the cell
         */
        public static Cell of(String main) {
            return new Cell(main, "", false);
        }

        /**
         * A cell with two texts.
         *
         * @param main its text
         * @param small the smaller one below
         * @return the cell
         */
        public static Cell of(String main, String small) {
            return new Cell(main, small, false);
        }

        /**
         * This, heavier.
         *
         * @return the cell
         */
        public Cell heavier() {
            return new Cell(main, small, true);
        }
    }

    private final SheetFlow flow;
    private final List<Column> columns;
    private final double unitMm;
    private final double widthMm;

    /**
     * Begins a table.
     *
     * @param flow the pages
     * @param columns its columns, from left to right
     * @param widthMm its width, mm
     */
    public SheetTable(SheetFlow flow, List<Column> columns, double widthMm) {
        this.flow = flow;
        this.columns = List.copyOf(columns);
        this.widthMm = widthMm;
        double shares = columns.stream().mapToDouble(Column::share).sum();
        this.unitMm = (widthMm - (columns.size() - 1) * GAP_MM) / shares;
    }

    /**
     * Sets the rows below the head.
     *
     * @param rows each with as many cells as there are columns
     */
    public void set(List<List<Cell>> rows) {
        List<Cell> head = new ArrayList<>();
        for (Column column : columns) {
            head.add(Cell.of(column.head()));
        }
        double headMm = high(head, HEAD);
        flow.need(headMm + (rows.isEmpty() ? 0 : high(rows.get(0), MAIN)) + 3);
        row(head, HEAD, headMm, HEAD_RULE);
        for (List<Cell> row : rows) {
            double mm = high(row, MAIN);
            if (flow.need(mm)) {
                row(head, HEAD, headMm, HEAD_RULE);
            }
            row(row, MAIN, mm, RULE);
        }
    }

    private double widthOf(Column column) {
        return column.share() * unitMm;
    }

    private double high(List<Cell> row, Lettering lettering) {
        double most = 0;
        for (int i = 0; i < columns.size(); i++) {
            double width = widthOf(columns.get(i));
            Cell cell = row.get(i);
            double mm = lines(cell.main(), lettering, width).size() * lettering.lineMm();
            if (!cell.small().isEmpty()) {
                mm += lines(cell.small(), SMALL, width).size() * SMALL.lineMm();
            }
            most = Math.max(most, mm);
        }
        return most + 2 * ABOVE_MM;
    }

    private List<String> lines(String text, Lettering lettering, double width) {
        return flow.typeface().wrapped(text, lettering, width);
    }

    private void row(List<Cell> row, Lettering lettering, double highMm, Pen rule) {
        double x = flow.left();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            Cell cell = row.get(i);
            double width = widthOf(column);
            double at =
                    switch (column.align()) {
                        case LEFT -> x;
                        case CENTRE -> x + width / 2;
                        case RIGHT -> x + width;
                    };
            double y = flow.y() - ABOVE_MM;
            Lettering main = aligned(cell.heavy() ? lettering.heavy() : lettering, column.align());
            y -= flow.page().paragraph(cell.main(), new Point(at, y), width, main);
            if (!cell.small().isEmpty()) {
                flow.page().paragraph(cell.small(), new Point(at, y), width, aligned(SMALL, column.align()));
            }
            x += width + GAP_MM;
        }
        flow.down(highMm);
        flow.page().line(new Point(flow.left(), flow.y()), new Point(flow.left() + widthMm, flow.y()), rule);
    }

    private static Lettering aligned(Lettering lettering, Align align) {
        return switch (align) {
            case LEFT -> lettering;
            case CENTRE -> lettering.centred();
            case RIGHT -> lettering.endingThere();
        };
    }
}
