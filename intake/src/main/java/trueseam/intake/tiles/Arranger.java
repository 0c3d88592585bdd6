package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Finds how pages lie. One file, one thread. */
final class Arranger {

    /** Labels are believed unless more ends than this share meet nothing. */
    private static final double LABELS_HOLD = 0.8;

    /** The order of the file is believed where nearly every end meets its like. */
    private static final double ORDER_HOLDS = 0.95;

    /** Lines alone are believed where so many ends meet. */
    private static final double LINES_HOLD = 0.85;

    private final Edges edges;
    private final Distances.Found right;
    private final Distances.Found down;

    Arranger(Edges edges, Distances distances, OptionalDouble overlapMm) {
        this.edges = edges;
        this.right = distances.of(true, overlapMm);
        this.down = distances.of(false, overlapMm);
    }

    /** The best of several layouts of which one is known to be right. */
    Optional<Arrangement> said(List<Grid> grids) {
        Arrangement best = null;
        for (Grid grid : grids) {
            if (grid.isProper()) {
                Steps steps = stepsOf(grid);
                Arrangement one = Arrangement.of(grid, steps, edges.of(grid, steps));
                if (best == null || one.beats(best)) {
                    best = one;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** What labels, order and lines say together; nothing if they leave it open. */
    Optional<Arrangement> found(List<Labels.Found> labels) {
        Optional<Arrangement> labelled =
                said(labels.stream().flatMap(l -> l.grids().stream()).toList());
        if (labelled.isPresent() && labelled.get().holds(LABELS_HOLD)) {
            return labelled;
        }
        Steps steps =
                Steps.of(best(right, mm -> ofBestPartners(mm, true)), best(down, mm -> ofBestPartners(mm, false)));
        Arrangement ordered = ordered(labels, steps);
        Arrangement pieced = pieced(steps);
        if (ordered.holds(ORDER_HOLDS) && ordered.met().met() > 0 && !pieced.beats(ordered)) {
            return Optional.of(ordered);
        }
        return pieced.holds(LINES_HOLD) ? Optional.of(pieced) : Optional.empty();
    }

    /** What was tried when nothing holds: for the sentence that says so. */
    Met nearest(List<Labels.Found> labels) {
        Steps steps =
                Steps.of(best(right, mm -> ofBestPartners(mm, true)), best(down, mm -> ofBestPartners(mm, false)));
        return pieced(steps).met();
    }

    private Steps stepsOf(Grid grid) {
        List<Grid.Pair> beside = grid.pairs(0, 1);
        List<Grid.Pair> below = grid.pairs(1, 0);
        return Steps.of(
                best(right, mm -> beside.stream()
                        .mapToDouble(
                                p -> edges.beside(p.first(), p.second(), mm).worth())
                        .sum()),
                best(down, mm -> below.stream()
                        .mapToDouble(p -> edges.below(p.first(), p.second(), mm).worth())
                        .sum()));
    }

    /** Of equally good distances the first: they come in the order of trust. */
    private static Steps.Step best(Distances.Found distances, ToDoubleFunction<Double> worth) {
        double best = distances.mm().get(0);
        double most = Double.NEGATIVE_INFINITY;
        int at = 0;
        int equal = 0;
        for (int i = 0; i < distances.mm().size(); i++) {
            double here = worth.applyAsDouble(distances.mm().get(i));
            if (here > most + 1e-9) {
                most = here;
                best = distances.mm().get(i);
                at = i;
                equal = 0;
            } else if (here > most - 1e-9) {
                equal++;
            }
        }
        return new Steps.Step(best, at >= distances.sure() && equal > 0 && most > 0);
    }

    /** If every page had the neighbour that its lines go on in best. */
    private double ofBestPartners(double mm, boolean beside) {
        double sum = 0;
        for (int a = 0; a < edges.leaves(); a++) {
            double best = 0;
            for (int b = 0; b < edges.leaves(); b++) {
                if (a != b) {
                    Met met = beside ? edges.beside(a, b, mm) : edges.below(a, b, mm);
                    best = Math.max(best, met.met() > 0 ? met.worth() : 0);
                }
            }
            sum += best;
        }
        return sum;
    }

    private Arrangement ordered(List<Labels.Found> labels, Steps steps) {
        Arrangement best = null;
        for (Grid grid : orders(labels)) {
            Arrangement one = Arrangement.of(grid, steps, edges.of(grid, steps));
            if (best == null || one.beats(best)) {
                best = one;
            }
        }
        return best;
    }

    /** Every width, row by row and column by column; by the numbers on the pages first, where some may be left out. */
    private List<Grid> orders(List<Labels.Found> labels) {
        List<Grid> grids = new ArrayList<>();
        for (Labels.Found found : labels) {
            int first = found.numbers().values().stream().min(Integer::compare).orElse(0);
            int last = found.numbers().values().stream().max(Integer::compare).orElse(-1);
            for (int wide = 1; wide <= last && last < 1000; wide++) {
                for (int base : first == 1 ? new int[] {1} : new int[] {1, first}) {
                    grids.add(numbered(found, base, wide, true));
                    grids.add(numbered(found, base, wide, false));
                }
            }
        }
        for (int wide = 1; wide <= edges.leaves(); wide++) {
            grids.add(Grid.inOrder(edges.leaves(), wide, true));
            grids.add(Grid.inOrder(edges.leaves(), wide, false));
        }
        return grids;
    }

    private static Grid numbered(Labels.Found found, int base, int wide, boolean byRow) {
        Map<Integer, Cell> cells = new HashMap<>();
        found.numbers().forEach((leaf, number) -> {
            int i = number - base;
            cells.put(leaf, byRow ? new Cell(i / wide, i % wide) : new Cell(i % wide, i / wide));
        });
        return Grid.of(cells, found.how() + ", " + (byRow ? "row by row" : "column by column"));
    }

    private Arrangement pieced(Steps steps) {
        List<Map<Integer, Cell>> blocks = Jigsaw.of(edges, steps);
        Met met = Met.NONE;
        for (Map<Integer, Cell> block : blocks) {
            met = met.plus(edges.of(new Grid(block, ""), steps));
        }
        return new Arrangement(blocks, steps, met, "lines that go on over the edges");
    }
}
