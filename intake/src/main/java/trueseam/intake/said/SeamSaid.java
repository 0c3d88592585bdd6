package trueseam.intake.said;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.garment.pattern.EdgeRef;

/**
 * Two edges, or chains of edges, are sewn together, or are not.
 *
 * @param name what the seam is called; empty where they are not sewn
 * @param first edges of one side in sewing order
 * @param second edges of the other side; of an eased seam the one that is eased in
 * @param easeMm how much longer the second is meant to be, mm; empty: by nothing
 * @param sewn whether they are sewn together
 */
public record SeamSaid(String name, List<EdgeRef> first, List<EdgeRef> second, OptionalDouble easeMm, boolean sewn) {

    private static final double SAME_MM = 0.06;

    /** Does not change; there is an edge on either side. */
    public SeamSaid {
        first = List.copyOf(first);
        second = List.copyOf(second);
        if (first.isEmpty() || second.isEmpty()) {
            throw new IllegalArgumentException("a seam with nothing on one side");
        }
    }

    /**
     * Whether it is about the same edges.
     *
     * @param other another
     * @return true if the two sides have the same edges, in whatever order
     */
    public boolean isSameEdges(SeamSaid other) {
        return sides().equals(other.sides());
    }

    /**
     * Whether it says the same.
     *
     * @param other another
     * @return true if edges, name and ease are the same, the ease as far as it is written
     */
    public boolean isSame(SeamSaid other) {
        return sewn == other.sewn
                && name.equals(other.name)
                && isSameEdges(other)
                && (!sewn || Math.abs(easeMm.orElse(0) - other.easeMm.orElse(0)) < SAME_MM);
    }

    private Set<Set<EdgeRef>> sides() {
        return Set.copyOf(List.of(new HashSet<>(first), new HashSet<>(second)));
    }
}
