package trueseam.cloth.packing;

import java.util.Arrays;

/**
 * How deep one shape lies in another at any place of it: the shortest way out (the penetration depth). A grid over the no-fit region holds
 * for each cell only the stretches of border that can be the nearest from within it, as they are seen from the cell's middle. This is the
 * innermost work of the search, so what is read together lies together, and is small: in single precision what is near is exact enough.
 */
final class NoFitField {

    /** Of a stretch: its direction; how far to the left of it the middle lies; where it begins and ends, seen from beside the middle. */
    private static final int NUMBERS = 5;

    private static final int OUT = 0;
    private static final int MIXED = 1;
    private static final int DEEP = 2;

    /** A cell is where its stretches begin in the list of the near ones, how many they are (9 bits) and its kind (2 bits). */
    private static final int COUNT_BITS = 9;

    private static final int KIND_BITS = 2;
    private static final int MOST_NEAR = (1 << COUNT_BITS) - 1;

    /** How much single precision can make of a distance, in cells. */
    private static final double SAME = 2e-6;

    private final double originX;
    private final double originY;
    private final double cell;
    private final double perCell;

    /** Squares of distances whose difference, squared, is less than this times one of them are the same: single precision. */
    private final double alike;

    private final int columns;
    private final int rows;
    private final int[] cells;
    private final float[] near;

    NoFitField(NoFit border, int grid) {
        double loX = Double.POSITIVE_INFINITY;
        double loY = Double.POSITIVE_INFINITY;
        double hiX = Double.NEGATIVE_INFINITY;
        double hiY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < border.x0.length; i++) {
            loX = Math.min(loX, Math.min(border.x0[i], border.x1[i]));
            hiX = Math.max(hiX, Math.max(border.x0[i], border.x1[i]));
            loY = Math.min(loY, Math.min(border.y0[i], border.y1[i]));
            hiY = Math.max(hiY, Math.max(border.y0[i], border.y1[i]));
        }
        cell = Math.max(hiX - loX, hiY - loY) / grid;
        originX = loX;
        originY = loY;
        perCell = 1 / cell;
        alike = SAME * cell * SAME * cell;
        columns = Math.max(1, (int) Math.ceil((hiX - loX) * perCell));
        rows = Math.max(1, (int) Math.ceil((hiY - loY) * perCell));
        cells = new int[columns * rows];
        near = new Filling(border).fill();
    }

    /** The depth at a place, 0 outside. */
    double depth(double px, double py) {
        return look(px, py, null);
    }

    /** As depth, and the shortest way out into way[0], way[1]. */
    double wayOut(double px, double py, double[] way) {
        return look(px, py, way);
    }

    private double look(double px, double py, double[] way) {
        double inX = px - originX;
        double inY = py - originY;
        int column = (int) (inX * perCell);
        int row = (int) (inY * perCell);
        if (inX <= 0 || inY <= 0 || column >= columns || row >= rows) {
            return 0;
        }
        int at = cells[row * columns + column];
        if (at == OUT) {
            return 0;
        }
        double dx = inX - (column + 0.5) * cell;
        double dy = inY - (row + 0.5) * cell;
        int begin = (at >>> (COUNT_BITS + KIND_BITS)) * NUMBERS;
        int end = begin + ((at >>> KIND_BITS) & MOST_NEAR) * NUMBERS;
        double least = Double.POSITIVE_INFINITY;
        double leastOff = 0;
        double leastBeyond = 0;
        double mostBeside = -1;
        int nearest = -1;
        for (int s = begin; s < end; s += NUMBERS) {
            double ux = near[s];
            double uy = near[s + 1];
            double off = near[s + 2] + ux * dy - uy * dx;
            double t = dx * ux + dy * uy;
            double beyond = t < near[s + 3] ? t - near[s + 3] : t > near[s + 4] ? t - near[s + 4] : 0;
            double d2 = off * off + beyond * beyond;
            double nearer = least - d2;
            // At a corner two stretches are as near as each other; the one that the place lies beside more tells its
            // side.
            if (nearer * nearer <= alike * least ? Math.abs(off) > mostBeside : nearer > 0) {
                least = d2;
                leastOff = off;
                mostBeside = Math.abs(off);
                leastBeyond = beyond;
                nearest = s;
            }
        }
        if (nearest < 0 || ((at & (1 << KIND_BITS) - 1) == MIXED && leastOff <= 0)) {
            return 0;
        }
        if (way != null) {
            double ux = near[nearest];
            double uy = near[nearest + 1];
            way[0] = leastOff * uy - leastBeyond * ux;
            way[1] = -leastOff * ux - leastBeyond * uy;
            return Math.sqrt(way[0] * way[0] + way[1] * way[1]);
        }
        return Math.sqrt(least);
    }

    /** Finds what is near to each cell; blocks of cells first, so that not every cell asks every stretch. */
    private final class Filling {

        private static final int BLOCK = 4;

        /** Each cell is asked in so many parts each way. */
        private static final int PARTS = 3;

        private final NoFit border;
        private final double[] ux;
        private final double[] uy;
        private final double[] length;
        private final double[] distance;
        private final int[] close;
        private final int[] candidates;
        private final boolean[] needed;
        private final double[] partly;
        private int closeCount;
        private float[] found = new float[columns * rows * 2 * NUMBERS];
        private int count;

        Filling(NoFit border) {
            this.border = border;
            int n = border.x0.length;
            ux = new double[n];
            uy = new double[n];
            length = new double[n];
            distance = new double[n];
            close = new int[n];
            candidates = new int[n];
            needed = new boolean[n];
            partly = new double[n];
            for (int i = 0; i < n; i++) {
                double dx = border.x1[i] - border.x0[i];
                double dy = border.y1[i] - border.y0[i];
                length[i] = Math.sqrt(dx * dx + dy * dy);
                ux[i] = dx / length[i];
                uy[i] = dy / length[i];
            }
        }

        float[] fill() {
            for (int row = 0; row < rows; row += BLOCK) {
                for (int column = 0; column < columns; column += BLOCK) {
                    block(column, row);
                }
            }
            return Arrays.copyOf(found, count * NUMBERS);
        }

        private void block(int column, int row) {
            double px = originX + (column + 0.5 * BLOCK) * cell;
            double py = originY + (row + 0.5 * BLOCK) * cell;
            double reach = BLOCK * cell * Math.sqrt(0.5);
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < distance.length; i++) {
                distance[i] = distance(i, px, py);
                least = Math.min(least, distance[i]);
            }
            boolean whole = least > reach;
            boolean inside = whole && border.winding(px, py) > 0;
            if (whole && !inside) {
                return;
            }
            closeCount = 0;
            for (int i = 0; i < distance.length; i++) {
                if (distance[i] <= least + 2 * reach) {
                    close[closeCount++] = i;
                }
            }
            for (int r = row; r < Math.min(rows, row + BLOCK); r++) {
                for (int c = column; c < Math.min(columns, column + BLOCK); c++) {
                    cell(c, r, inside);
                }
            }
        }

        private void cell(int column, int row, boolean inside) {
            double px = originX + (column + 0.5) * cell;
            double py = originY + (row + 0.5) * cell;
            double half = cell * Math.sqrt(0.5) * 1.000001;
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < closeCount; k++) {
                distance[close[k]] = distance(close[k], px, py);
                least = Math.min(least, distance[close[k]]);
            }
            int kind = least <= half ? MIXED : inside || border.winding(px, py) > 0 ? DEEP : OUT;
            if (kind == OUT) {
                return;
            }
            // Deep inside the depth need not be exact.
            double reach = kind == MIXED ? least + 2 * half : least + half / 2;
            int within = 0;
            for (int k = 0; k < closeCount; k++) {
                if (distance[close[k]] <= reach) {
                    candidates[within] = close[k];
                    needed[within++] = kind == DEEP;
                }
            }
            if (kind == MIXED) {
                markNeeded(px, py, within, half / PARTS);
            }
            int from = count;
            for (int k = 0; k < within && count - from < MOST_NEAR; k++) {
                if (needed[k]) {
                    add(candidates[k], px, py);
                }
            }
            cells[row * columns + column] = ((from << COUNT_BITS | (count - from)) << KIND_BITS) | kind;
        }

        /** What can be the nearest is asked of the cell's parts, each by itself: far fewer stretches are needed so. */
        private void markNeeded(double px, double py, int within, double half) {
            for (int part = 0; part < PARTS * PARTS; part++) {
                int column = part % PARTS;
                int row = part / PARTS;
                double qx = px + ((column + 0.5) / PARTS - 0.5) * cell;
                double qy = py + ((row + 0.5) / PARTS - 0.5) * cell;
                double least = Double.POSITIVE_INFINITY;
                for (int k = 0; k < within; k++) {
                    partly[k] = distance(candidates[k], qx, qy);
                    least = Math.min(least, partly[k]);
                }
                for (int k = 0; k < within; k++) {
                    needed[k] |= partly[k] <= least + 2 * half;
                }
            }
        }

        private void add(int i, double px, double py) {
            int s = count++ * NUMBERS;
            if (s + NUMBERS > found.length) {
                found = Arrays.copyOf(found, found.length * 2);
            }
            double dx = px - border.x0[i];
            double dy = py - border.y0[i];
            double along = dx * ux[i] + dy * uy[i];
            found[s] = (float) ux[i];
            found[s + 1] = (float) uy[i];
            found[s + 2] = (float) (ux[i] * dy - uy[i] * dx);
            found[s + 3] = (float) -along;
            found[s + 4] = (float) (length[i] - along);
        }

        private double distance(int i, double px, double py) {
            double vx = px - border.x0[i];
            double vy = py - border.y0[i];
            double along = Math.max(0, Math.min(length[i], vx * ux[i] + vy * uy[i]));
            double dx = vx - along * ux[i];
            double dy = vy - along * uy[i];
            return Math.sqrt(dx * dx + dy * dy);
        }
    }
}
