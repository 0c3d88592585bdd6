package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts pages together by their lines alone: the pair whose lines go on best first, then the next, never against what lies already. Pages that
 * no line joins with others come to lie in a block of their own: where that lies does not matter to the pattern.
 */
final class Jigsaw {

    private record Joint(int first, int second, boolean beside, Met met) {}

    private final Edges edges;
    private final Steps steps;
    private final Map<Integer, Map<Integer, Cell>> blocks = new HashMap<>();
    private final Map<Integer, Integer> blockOf = new HashMap<>();

    private Jigsaw(Edges edges, Steps steps) {
        this.edges = edges;
        this.steps = steps;
        for (int i = 0; i < edges.leaves(); i++) {
            blocks.put(i, new HashMap<>(Map.of(i, new Cell(0, 0))));
            blockOf.put(i, i);
        }
    }

    /** The blocks, the largest first. */
    static List<Map<Integer, Cell>> of(Edges edges, Steps steps) {
        Jigsaw jigsaw = new Jigsaw(edges, steps);
        for (Joint joint : joints(edges, steps)) {
            jigsaw.join(joint);
        }
        List<Map<Integer, Cell>> blocks = new ArrayList<>(jigsaw.blocks.values());
        blocks.sort(Comparator.comparingInt((Map<Integer, Cell> b) -> -b.size())
                .thenComparing(b -> b.keySet().stream().min(Integer::compare).orElseThrow()));
        return blocks;
    }

    private static List<Joint> joints(Edges edges, Steps steps) {
        List<Joint> joints = new ArrayList<>();
        for (int a = 0; a < edges.leaves(); a++) {
            for (int b = 0; b < edges.leaves(); b++) {
                if (a != b) {
                    joints.add(new Joint(a, b, true, edges.beside(a, b, steps.right())));
                    joints.add(new Joint(a, b, false, edges.below(a, b, steps.down())));
                }
            }
        }
        joints.removeIf(j -> !j.met.joins());
        // Of equally good ones, pages that follow each other in the file first.
        joints.sort(Comparator.comparingDouble((Joint j) -> -j.met.worth())
                .thenComparing(j -> j.second > j.first ? 0 : 1)
                .thenComparing(j -> Math.abs(j.first - j.second)));
        return joints;
    }

    private void join(Joint joint) {
        int into = blockOf.get(joint.first);
        int from = blockOf.get(joint.second);
        if (into == from) {
            return;
        }
        Cell at = blocks.get(into).get(joint.first).plus(joint.beside ? 0 : 1, joint.beside ? 1 : 0);
        Cell was = blocks.get(from).get(joint.second);
        Map<Integer, Cell> both = new HashMap<>(blocks.get(into));
        blocks.get(from)
                .forEach((leaf, cell) -> both.put(leaf, cell.plus(at.row() - was.row(), at.column() - was.column())));
        Grid grid = new Grid(both, "");
        if (grid.isProper() && agrees(grid)) {
            blocks.remove(from);
            blocks.put(into, both);
            both.keySet().forEach(leaf -> blockOf.put(leaf, into));
        }
    }

    /** No edge of it may have many lines of which hardly any goes on. */
    private boolean agrees(Grid grid) {
        for (Grid.Pair pair : grid.pairs(0, 1)) {
            Met met = edges.beside(pair.first(), pair.second(), steps.right());
            if (met.missed() > 2 && met.missed() > 2 * met.met()) {
                return false;
            }
        }
        for (Grid.Pair pair : grid.pairs(1, 0)) {
            Met met = edges.below(pair.first(), pair.second(), steps.down());
            if (met.missed() > 2 && met.missed() > 2 * met.met()) {
                return false;
            }
        }
        return true;
    }
}
