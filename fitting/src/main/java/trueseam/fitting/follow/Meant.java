package trueseam.fitting.follow;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * By how much edges were made longer on purpose, as sewn.
 *
 * @param mm by edge, mm; minus for shorter
 */
public record Meant(Map<EdgeRef, Double> mm) {

    /** Nothing was meant to change its length. */
    public static final Meant NOTHING = new Meant(Map.of());

    // Immutable.
    public Meant {
        mm = Map.copyOf(mm);
    }

    /**
     * Adds what one alteration did.
     *
     * @param before the pattern before it
     * @param after the pattern after it
     * @param lengthens the edges that it means to change
     * @return the sum so far
     */
    public Meant plus(Pattern before, Pattern after, Set<EdgeRole> lengthens) {
        if (lengthens.isEmpty()) {
            return this;
        }
        Map<EdgeRef, Double> sum = new HashMap<>(mm);
        for (Piece piece : before.pieces()) {
            for (Edge edge : piece.edges()) {
                if (lengthens.contains(edge.role())) {
                    double longer = after.piece(piece.name()).sewnLength(edge.name()) - piece.sewnLength(edge.name());
                    sum.merge(new EdgeRef(piece.name(), edge.name()), longer, Double::sum);
                }
            }
        }
        return new Meant(sum);
    }

    /**
     * By how much an edge was meant to get longer.
     *
     * @param edge the edge
     * @return mm; 0 if it was not
     */
    public double of(EdgeRef edge) {
        return mm.getOrDefault(edge, 0.0);
    }
}
