package trueseam.garment.pattern;

import java.util.List;

/**
 * Two edges, or two chains of edges, that are sewn together, and how much longer the second is meant to be.
 *
 * @param name for example {@code side seam}
 * @param first edges of one side in sewing order, at least one
 * @param second edges of the other side in sewing order, at least one; for an eased seam the one that is eased in
 * @param easeMm sewn length of the second less sewn length of the first, as intended, mm
 */
public record Seam(String name, List<EdgeRef> first, List<EdgeRef> second, double easeMm) {

    // A seam with nothing on one side is no seam; an ease that is no number cannot be sewn.
    public Seam {
        first = List.copyOf(first);
        second = List.copyOf(second);
        if (first.isEmpty() || second.isEmpty()) {
            throw new IllegalArgumentException("Seam \"" + name + "\" needs an edge on either side.");
        }
        if (!(Math.abs(easeMm) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "Seam \"" + name + "\": an ease of " + easeMm + " mm is no length; give a number.");
        }
        easeMm = easeMm + 0.0; // -0.0 and 0.0 are one ease
    }

    /**
     * A seam of one edge with one edge.
     *
     * @param name its name
     * @param first one side
     * @param second the other side
     * @param easeMm how much longer the second is meant to be, mm
     * @return the seam
     */
    public static Seam of(String name, EdgeRef first, EdgeRef second, double easeMm) {
        return new Seam(name, List.of(first), List.of(second), easeMm);
    }
}
