package trueseam.cloth.packing;

import java.util.Arrays;

/**
 * How deep one shape lies in another at any place of it: the shortest way out (the penetration depth). A grid over the no-fit region holds
 * for each cell only the stretches of border that can be the nearest from within it. This is the innermost work of the search, so what is
 * read together lies together.
 */
final class NoFitField {

    /** Of a stretch: where it begins, its direction, its length. */
    private static final int NUMBERS = 5;

    private static final int OUT = 0;
    private static final int MIXED = 1;
    private static final int DEEP = 2;

    /** A cell is where its stretches begin in the list of the near ones, how many they are (8 bits) and its kind (2 bits). */
    private static final int COUNT_BITS = 8;

    private static final int KIND_BITS = 2;
    private static final int MOST_NEAR = (1 << COUNT_BITS) - 1;

    private final double[] stretch;
    private final double originX;
    private final double originY;
    private final double perCell;
    private final int columns;
    private final int rows;
    private final int[] cells;
    private final short[] near;

    NoFitField(NoFit border, int grid) {
        int n = border.x0.length;
        stretch = new double[n * NUMBERS];
        double loX = Double.POSITIVE_INFINITY;
        double loY = Double.POSITIVE_INFINITY;
        double hiX = Double.NEGATIVE_INFINITY;
        double hiY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double dx = border.x1[i] - border.x0[i];
            double dy = border.y1[i] - border.y0[i];
            double length = Math.sqrt(dx * dx + dy * dy);
            stretch[i * NUMBERS] = border.x0[i];
            stretch[i * NUMBERS + 1] = border.y0[i];
            stretch[i * NUMBERS + 2] = dx / length;
            stretch[i * NUMBERS + 3] = dy / length;
            stretch[i * NUMBERS + 4] = length;
            loX = Math.min(loX, Math.min(border.x0[i], border.x1[i]));
            hiX = Math.max(hiX, Math.max(border.x0[i], border.x1[i]));
            loY = Math.min(loY, Math.min(border.y0[i], border.y1[i]));
            hiY = Math.max(hiY, Math.max(border.y0[i], border.y1[i]));
        }
        double cell = Math.max(hiX - loX, hiY - loY) / grid;
        originX = loX;
        originY = loY;
        perCell = 1 / cell;
        columns = Math.max(1, (int) Math.ceil((hiX - loX) * perCell));
        rows = Math.max(1, (int) Math.ceil((hiY - loY) * perCell));
        cells = new int[columns * rows];
        near = fill(border, cell);
    }

    private short[] fill(NoFit border, double cell) {
        short[] found = new short[columns * rows * 4];
        int count = 0;
        double half = cell * Math.sqrt(0.5) * 1.000001;
        double[] distance = new double[stretch.length / NUMBERS];
        for (int row = 0; row < rows; row++) {
            boolean inside = false;
            double before = -1;
            for (int column = 0; column < columns; column++) {
                double px = originX + (column + 0.5) * cell;
                double py = originY + (row + 0.5) * cell;
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i < distance.length; i++) {
                    distance[i] = distance(i, px, py);
                    least = Math.min(least, distance[i]);
                }
                // From one middle to the next the border is not crossed where it is farther than the way.
                if (before < cell) {
                    inside = border.winding(px, py) > 0;
                }
                before = least;
                int kind = least <= half ? MIXED : inside ? DEEP : OUT;
                if (kind == OUT) {
                    continue;
                }
                // Deep inside the depth need not be exact.
                double reach = kind == MIXED ? least + 2 * half : least + half / 2;
                int from = count;
                for (int i = 0; i < distance.length && count - from < MOST_NEAR; i++) {
                    if (distance[i] <= reach) {
                        if (count == found.length) {
                            found = Arrays.copyOf(found, count * 2);
                        }
                        found[count++] = (short) i;
                    }
                }
                cells[row * columns + column] = ((from << COUNT_BITS | (count - from)) << KIND_BITS) | kind;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private double distance(int i, double px, double py) {
        int s = i * NUMBERS;
        double vx = px - stretch[s];
        double vy = py - stretch[s + 1];
        double along = Math.max(0, Math.min(stretch[s + 4], vx * stretch[s + 2] + vy * stretch[s + 3]));
        double dx = vx - along * stretch[s + 2];
        double dy = vy - along * stretch[s + 3];
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The depth at a place, 0 outside. */
    double depth(double px, double py) {
        int i = nearest(px, py);
        return i < 0 ? 0 : distance(i, px, py);
    }

    /** As depth, and the shortest way out into way[0], way[1]. */
    double wayOut(double px, double py, double[] way) {
        int i = nearest(px, py);
        if (i < 0) {
            return 0;
        }
        int s = i * NUMBERS;
        double vx = px - stretch[s];
        double vy = py - stretch[s + 1];
        double along = Math.max(0, Math.min(stretch[s + 4], vx * stretch[s + 2] + vy * stretch[s + 3]));
        way[0] = along * stretch[s + 2] - vx;
        way[1] = along * stretch[s + 3] - vy;
        return Math.sqrt(way[0] * way[0] + way[1] * way[1]);
    }

    /** The stretch of border that is nearest to a place inside; -1 for a place outside. */
    private int nearest(double px, double py) {
        int column = (int) ((px - originX) * perCell);
        int row = (int) ((py - originY) * perCell);
        if (px <= originX || py <= originY || column >= columns || row >= rows) {
            return -1;
        }
        int cell = cells[row * columns + column];
        if (cell == OUT) {
            return -1;
        }
        int begin = cell >>> (COUNT_BITS + KIND_BITS);
        int end = begin + ((cell >>> KIND_BITS) & MOST_NEAR);
        double least = Double.POSITIVE_INFINITY;
        double leastOff = 0;
        int nearest = -1;
        for (int c = begin; c < end; c++) {
            int s = near[c] * NUMBERS;
            double vx = px - stretch[s];
            double vy = py - stretch[s + 1];
            double t = vx * stretch[s + 2] + vy * stretch[s + 3];
            double off = stretch[s + 2] * vy - stretch[s + 3] * vx;
            double beyond = t < 0 ? t : t > stretch[s + 4] ? t - stretch[s + 4] : 0;
            double d2 = off * off + beyond * beyond;
            // At a corner two stretches are as near as each other; the one that the place lies beside more tells its
            // side.
            if (d2 < least * (1 - 1e-9) || (d2 <= least * (1 + 1e-9) && Math.abs(off) > Math.abs(leastOff))) {
                least = d2;
                leastOff = off;
                nearest = near[c];
            }
        }
        return (cell & (1 << KIND_BITS) - 1) == DEEP || leastOff > 0 ? nearest : -1;
    }
}
