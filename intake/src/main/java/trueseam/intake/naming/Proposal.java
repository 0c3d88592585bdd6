package trueseam.intake.naming;

import java.util.List;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;

/**
 * What an outline may be.
 *
 * @param kind which piece
 * @param unlike how unlike a usual piece of the kind it is: 0 the very mean, about 1 a usual one, above 4 hardly one
 * @param confidence from 0 to 1 that it is of this kind
 * @param mirrored whether it was drawn as the other hand of the pair
 * @param turn how it is turned to lie upright (after mirroring, if it is)
 * @param edges its edges, anticlockwise, as they lie upright
 * @param others other kinds that it may be, the likelier first
 */
public record Proposal(
        PieceKind kind,
        double unlike,
        double confidence,
        boolean mirrored,
        Motion turn,
        List<NamedEdge> edges,
        List<PieceKind> others) {

    /** Does not change. */
    public Proposal {
        edges = List.copyOf(edges);
        others = List.copyOf(others);
    }

    /**
     * An edge and what it may be.
     *
     * @param name what it is called
     * @param role what it is
     * @param path its line, upright
     * @param confidence from 0 to 1 that it is that edge
     */
    public record NamedEdge(String name, EdgeRole role, Path path, double confidence) {}
}
