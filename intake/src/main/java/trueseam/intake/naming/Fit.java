package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.EdgeRole;

/**
 * A known piece laid on an outline: which stretches each of its edges takes.
 *
 * @param known the piece
 * @param laid how the outline lies
 * @param first the stretch that the first edge begins with
 * @param counts how many stretches each edge takes
 * @param unlike the mean of how unlike the edges are, and the piece as a whole
 * @param each how unlike each edge is
 */
record Fit(KnownPiece known, Laid laid, int first, List<Integer> counts, double unlike, List<Double> each) {

    /** A corner inside an edge is unusual: a dart's mouth left open, or a corner that the pen made. */
    private static final double INNER_CORNER = 0.6;

    /** More than any shape can speak against an edge: five things, 16 each at most, in the mean. */
    private static final double SAID_OTHERWISE = 20;

    /** A raglan seam has neither darts nor corners: with one in it, it is an armhole and a shoulder. */
    private static final double CORNER_IN_A_RAGLAN = 2;

    /** The best way to lay the known piece on the outline, whichever stretch its first edge begins with. */
    static Optional<Fit> best(
            KnownPiece known,
            Laid laid,
            List<List<EdgeShape>> shapes,
            List<Optional<SaidStretch>> said,
            double ofPiece) {
        int n = laid.stretches();
        int m = known.edges().size();
        if (n < m) {
            return Optional.empty();
        }
        double[][][] cost = costs(known, shapes, said, n, m);
        Fit best = null;
        for (int first = 0; first < n; first++) {
            Fit fit = from(known, laid, cost, first, n, m, ofPiece);
            if (fit != null && (best == null || fit.unlike < best.unlike)) {
                best = fit;
            }
        }
        return Optional.ofNullable(best);
    }

    /** How much of one edge of another fit of the same outline is the same edge in this one: 0 to 1, by its stretches. */
    double agrees(Fit other, int edge) {
        int at = other.first;
        for (int k = 0; k < edge; k++) {
            at += other.counts.get(k);
        }
        int n = laid.stretches();
        int alike = 0;
        for (int i = 0; i < other.counts.get(edge); i++) {
            int there = (at + i) % n;
            int here = other.laid.mirrored() == laid.mirrored() ? there : n - 1 - there;
            if (roleOf(here) == other.known.edges().get(edge).role()) {
                alike++;
            }
        }
        return (double) alike / other.counts.get(edge);
    }

    private EdgeRole roleOf(int stretch) {
        int n = laid.stretches();
        int into = ((stretch - first) % n + n) % n;
        int k = 0;
        while (into >= counts.get(k)) {
            into -= counts.get(k);
            k++;
        }
        return known.edges().get(k).role();
    }

    private static double[][][] costs(
            KnownPiece known, List<List<EdgeShape>> shapes, List<Optional<SaidStretch>> said, int n, int m) {
        double[][][] cost = new double[m][n][];
        for (int k = 0; k < m; k++) {
            boolean raglan = known.edges().get(k).role() == EdgeRole.RAGLAN;
            double inner = raglan ? CORNER_IN_A_RAGLAN : INNER_CORNER;
            for (int i = 0; i < n; i++) {
                List<EdgeShape> runs = shapes.get(i);
                cost[k][i] = new double[runs.size()];
                double against = 0;
                for (int c = 0; c < runs.size(); c++) {
                    Optional<SaidStretch> other = said.get((i + c) % n);
                    if (other.isPresent() && !other.get().mayBe(known.edges().get(k), known)) {
                        against += SAID_OTHERWISE;
                    }
                    cost[k][i][c] = against + known.edges().get(k).unlike(runs.get(c)) + inner * c;
                }
            }
        }
        return cost;
    }

    /** Stretches are dealt out to the edges in order, each at least one; the dearest sum is avoided (dynamic programming). */
    private static Fit from(KnownPiece known, Laid laid, double[][][] cost, int first, int n, int m, double ofPiece) {
        double[][] sum = new double[m + 1][n + 1];
        int[][] taken = new int[m + 1][n + 1];
        for (double[] row : sum) {
            java.util.Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        sum[0][0] = 0;
        for (int k = 1; k <= m; k++) {
            for (int j = k; j <= n - (m - k); j++) {
                for (int c = 1; c <= Math.min(j, cost[k - 1][0].length); c++) {
                    int start = (first + j - c) % n;
                    double total = sum[k - 1][j - c] + cost[k - 1][start][c - 1];
                    if (total < sum[k][j]) {
                        sum[k][j] = total;
                        taken[k][j] = c;
                    }
                }
            }
        }
        if (Double.isInfinite(sum[m][n])) {
            return null;
        }
        List<Integer> counts = new ArrayList<>();
        List<Double> each = new ArrayList<>();
        int j = n;
        for (int k = m; k >= 1; k--) {
            int c = taken[k][j];
            counts.add(0, c);
            each.add(0, cost[k - 1][(first + j - c) % n][c - 1]);
            j -= c;
        }
        return new Fit(known, laid, first, counts, (sum[m][n] + ofPiece) / (m + 1), each);
    }
}
