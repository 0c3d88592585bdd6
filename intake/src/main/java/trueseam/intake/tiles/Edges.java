package trueseam.intake.tiles;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trueseam.geometry.Bounds;

/**
 * How the lines of pages go on over the edges between them. The edge between two pages lies in the middle of what both show. Works out each
 * page's lines at each edge once; one file, one thread.
 */
final class Edges {

    private record Rim(int leaf, boolean upright, int inward, long edgeMicron) {}

    private final List<Leaf> leaves;
    private final Bounds window;
    private final Map<Rim, List<Crossing>> rims = new HashMap<>();

    Edges(List<Leaf> leaves, Bounds window) {
        this.leaves = leaves;
        this.window = window;
    }

    /** Where a page's part ends on the right, and the next one's begins, that many mm to the left. */
    double rightEdge(double step) {
        return (window.maxX() + window.minX() + step) / 2;
    }

    /** Where a page's part ends below, and the next one's begins, that many mm further up. */
    double lowEdge(double step) {
        return (window.maxY() + window.minY() - step) / 2;
    }

    private List<Crossing> rim(int leaf, boolean upright, int inward, double edge) {
        return rims.computeIfAbsent(new Rim(leaf, upright, inward, Math.round(edge * 1000)), r -> leaves.get(leaf)
                .over(upright, edge, inward));
    }

    Met beside(int left, int right, double step) {
        double edge = rightEdge(step);
        return met(rim(left, true, -1, edge), rim(right, true, 1, edge - step));
    }

    Met below(int upper, int lower, double step) {
        double edge = lowEdge(step);
        return met(rim(upper, false, 1, edge), rim(lower, false, -1, edge + step));
    }

    private static Met met(List<Crossing> a, List<Crossing> b) {
        boolean[] used = new boolean[b.size()];
        int met = 0;
        int from = 0;
        for (Crossing one : a) {
            while (from < b.size() && b.get(from).at() < one.at() - Crossing.NEAR_MM) {
                from++;
            }
            for (int j = from; j < b.size() && b.get(j).at() <= one.at() + Crossing.NEAR_MM; j++) {
                if (!used[j] && one.goesOnIn(b.get(j))) {
                    used[j] = true;
                    met++;
                    break;
                }
            }
        }
        return new Met(met, a.size() + b.size() - 2 * met, 0);
    }

    /** Of a whole layout. */
    Met of(Grid grid, Steps steps) {
        Met all = Met.NONE;
        for (Grid.Pair pair : grid.pairs(0, 1)) {
            all = all.plus(beside(pair.first(), pair.second(), steps.right()));
        }
        for (Grid.Pair pair : grid.pairs(1, 0)) {
            all = all.plus(below(pair.first(), pair.second(), steps.down()));
        }
        return all.plus(loose(grid));
    }

    /** Lines that run off the window where no page lies; what ends in the strip that a neighbour would have shown too, ends there. */
    private Met loose(Grid grid) {
        int loose = 0;
        for (Map.Entry<Integer, Cell> at : grid.cells().entrySet()) {
            int leaf = at.getKey();
            Cell cell = at.getValue();
            loose += grid.has(cell.plus(0, 1))
                    ? 0
                    : rim(leaf, true, -1, window.maxX()).size();
            loose += grid.has(cell.plus(0, -1))
                    ? 0
                    : rim(leaf, true, 1, window.minX()).size();
            loose += grid.has(cell.plus(1, 0))
                    ? 0
                    : rim(leaf, false, 1, window.minY()).size();
            loose += grid.has(cell.plus(-1, 0))
                    ? 0
                    : rim(leaf, false, -1, window.maxY()).size();
        }
        return new Met(0, 0, loose);
    }

    int leaves() {
        return leaves.size();
    }
}
