package trueseam.cloth.packing;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Takes overlaps out of an arrangement, on the length that it has, by guided local search: copies that overlap are laid where their
 * weighted overlap is least, and overlaps that stay become heavier until something gives (Voudouris and Tsang, "Guided local search",
 * 1999; for laying shapes Egeblad, Nielsen, Odgaard, "Fast neighborhood search for two- and three-dimensional nesting problems", 2007;
 * Umetani et al., "Solving the irregular strip packing problem via guided local search for overlap minimization", 2009; sampling of
 * places with refinement after Gardeyn, Vanden Berghe, Wauters, "An open-source heuristic to reboot 2D nesting research", 2025). What
 * overlap costs is found from the penetration depth (see Pairs).
 */
final class Separation {

    /** Places tried anywhere on the strip, and near where the copy lies. */
    private static final int ANYWHERE = 60;

    private static final int NEARBY = 20;

    /** Places that are refined. */
    private static final int BEST = 3;

    /** A rough look at each of them, then a fine one at the best: steps, and how small the smallest is. */
    private static final int ROUGH_TRIES = 6;

    private static final double ROUGH = 0.2;
    private static final int FINE_TRIES = 24;
    private static final double FINE = 0.005;
    private static final int PATIENCE = 100;
    private static final int STRIKES = 2;
    private static final double BETTER = 0.98;
    private static final double HEAVIER_LEAST = 1.2;
    private static final double HEAVIER_MOST = 2.0;
    private static final double LIGHTER = 0.95;

    private final Arrangement a;
    private final SplittableRandom random;
    private WaysOut ways = new WaysOut();
    private WaysOut tried = new WaysOut();
    private final double[] corner = new double[2];
    private final int[] candidateForm = new int[BEST + 1];
    private final double[] candidateX = new double[BEST + 1];
    private final double[] candidateY = new double[BEST + 1];
    private final double[] candidateCost = new double[BEST + 1];
    private int candidates;
    private double px;
    private double py;
    private double cost;

    Separation(Arrangement a, SplittableRandom random) {
        this.a = a;
        this.random = random;
    }

    /** Whether it came out without overlap; else the arrangement is the best that was seen. */
    boolean run(BooleanSupplier stop) {
        return run(stop, STRIKES);
    }

    boolean run(BooleanSupplier stop, int mostStrikes) {
        a.forgetWeights();
        double best = a.total();
        Arrangement.Snapshot kept = a.snapshot();
        int strikes = 0;
        while (best > 0 && strikes < mostStrikes) {
            double before = best;
            int idle = 0;
            while (idle < PATIENCE) {
                round();
                double total = a.total();
                if (total == 0) {
                    return true;
                }
                if (total < best) {
                    idle = total < best * BETTER ? 0 : idle + 1;
                    best = total;
                    kept = a.snapshot();
                } else {
                    idle++;
                }
                if (stop.getAsBoolean()) {
                    a.load(kept);
                    return false;
                }
                a.reweigh(HEAVIER_LEAST, HEAVIER_MOST, LIGHTER);
            }
            strikes = best < before * BETTER ? 0 : strikes + 1;
            a.load(kept);
        }
        return best == 0;
    }

    private void round() {
        int[] order = new int[a.count];
        int n = 0;
        for (int i = a.fixedCount; i < a.count; i++) {
            if (a.overlapOf(i) > 0) {
                order[n++] = i;
            }
        }
        for (int k = n - 1; k > 0; k--) {
            int at = random.nextInt(k + 1);
            int t = order[k];
            order[k] = order[at];
            order[at] = t;
        }
        for (int k = 0; k < n; k++) {
            if (a.overlapOf(order[k]) > 0) {
                relay(order[k]);
            }
        }
    }

    /** Lays a copy where its weighted overlap is the least that is found. */
    private void relay(int i) {
        double now = a.cost(i, a.form[i], a.x[i], a.y[i], Double.POSITIVE_INFINITY);
        candidates = 0;
        keep(a.form[i], a.x[i], a.y[i], now);
        int[] forms = a.choices[i];
        for (int k = 0; k < ANYWHERE; k++) {
            int f = forms[random.nextInt(forms.length)];
            Form form = a.forms.get(f);
            consider(
                    i,
                    f,
                    form.lowX + random.nextDouble() * (a.length - form.reachX - form.lowX),
                    form.lowY + random.nextDouble() * (form.highY - form.lowY));
        }
        double near = 0.1 * a.extent(i);
        for (int k = 0; k < NEARBY; k++) {
            consider(i, a.form[i], a.x[i] + near * random.nextGaussian(), a.y[i] + near * random.nextGaussian());
        }
        int bestForm = a.form[i];
        double bestX = a.x[i];
        double bestY = a.y[i];
        double best = now;
        for (int k = 0; k < candidates && best > 0; k++) {
            refine(i, candidateForm[k], candidateX[k], candidateY[k], candidateCost[k], ROUGH_TRIES, ROUGH);
            if (cost < best) {
                best = cost;
                bestForm = candidateForm[k];
                bestX = px;
                bestY = py;
            }
        }
        refine(i, bestForm, bestX, bestY, best, FINE_TRIES, FINE);
        if (cost < now) {
            a.place(i, bestForm, px, py);
        }
    }

    private void consider(int i, int f, double wantedX, double wantedY) {
        Form form = a.forms.get(f);
        double x = form.allowedX(wantedX, a.length);
        double y = form.allowedY(wantedY);
        if (Double.isNaN(x) || Double.isNaN(y)) {
            return;
        }
        double bound = candidates < BEST ? Double.POSITIVE_INFINITY : candidateCost[candidates - 1];
        double c = a.cost(i, f, x, y, bound);
        if (c < bound) {
            keep(f, x, y, c);
        }
    }

    private void keep(int f, double x, double y, double c) {
        int at = Math.min(candidates, BEST - 1);
        while (at > 0 && candidateCost[at - 1] > c) {
            candidateForm[at] = candidateForm[at - 1];
            candidateX[at] = candidateX[at - 1];
            candidateY[at] = candidateY[at - 1];
            candidateCost[at] = candidateCost[at - 1];
            at--;
        }
        candidateForm[at] = f;
        candidateX[at] = x;
        candidateY[at] = y;
        candidateCost[at] = c;
        candidates = Math.min(BEST, candidates + 1);
    }

    /** Moves a copy, beginning at a place, to where its weighted overlap is least nearby; leaves px, py, cost. */
    private void refine(int i, int f, double x, double y, double c, int mostTries, double fineness) {
        px = x;
        py = y;
        cost = c;
        double step = 0.05 * a.extent(i);
        double least = fineness * step;
        int tries = 0;
        a.cost(i, f, px, py, Double.POSITIVE_INFINITY, ways);
        while (cost > 0 && step > least && tries++ < mostTries) {
            double fromX = px;
            double fromY = py;
            // A move that is better brings its own ways out.
            int found = ways.found;
            double ax = ways.ax;
            double ay = ways.ay;
            double bx = ways.bx;
            double by = ways.by;
            boolean better =
                    found > 1 && ways.both(corner) && move(i, f, fromX + corner[0] * PUSH, fromY + corner[1] * PUSH);
            if (!better) {
                better = move(i, f, fromX + ax * PUSH, fromY + ay * PUSH);
            }
            if (!better && found > 1) {
                better = move(i, f, fromX + bx * PUSH, fromY + by * PUSH);
            }
            if (!better) {
                double turn = random.nextDouble() * Math.PI / 2;
                double dx = step * Math.cos(turn);
                double dy = step * Math.sin(turn);
                better = move(i, f, fromX + dx, fromY + dy)
                        || move(i, f, fromX - dy, fromY + dx)
                        || move(i, f, fromX - dx, fromY - dy)
                        || move(i, f, fromX + dy, fromY - dx)
                        || repeats(i, f, fromX, fromY);
                if (!better) {
                    step *= 0.5;
                }
            }
        }
    }

    /** On cloth with a repeat the next places are a whole repeat away. */
    private boolean repeats(int i, int f, double fromX, double fromY) {
        Form form = a.forms.get(f);
        return (form.stepX > 0 && (move(i, f, fromX + form.stepX, fromY) || move(i, f, fromX - form.stepX, fromY)))
                || (form.stepY > 0 && (move(i, f, fromX, fromY + form.stepY) || move(i, f, fromX, fromY - form.stepY)));
    }

    /** A little more than the way out, so that rounding leaves nothing. */
    private static final double PUSH = 1 + 1e-9;

    private boolean move(int i, int f, double wantedX, double wantedY) {
        Form form = a.forms.get(f);
        double x = form.allowedX(wantedX, a.length);
        double y = form.allowedY(wantedY);
        if (Double.isNaN(x) || Double.isNaN(y)) {
            return false;
        }
        double c = a.cost(i, f, x, y, cost, tried);
        if (c < cost) {
            WaysOut before = ways;
            ways = tried;
            tried = before;
            cost = c;
            px = x;
            py = y;
            return true;
        }
        return false;
    }
}
