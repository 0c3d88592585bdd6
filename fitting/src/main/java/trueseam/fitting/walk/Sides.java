package trueseam.fitting.walk;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.truing.SeamEnds;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;

/**
 * Both sides of a seam in the direction of walking: which way each edge is walked follows from what it meets at its ends, and a piece
 * that would come to lie on the other one is turned over.
 *
 * @param standing the side that stays
 * @param rolling the side that rolls
 */
record Sides(List<Link> standing, List<Link> rolling) {

    static Sides of(Pattern pattern, Seam seam) {
        List<Boolean> first = directions(pattern, seam.first());
        List<Boolean> second = directions(pattern, seam.second());
        if (seam.first().size() == 1 && seam.second().size() == 1) {
            first = List.of(true);
            second = List.of(startsTogether(pattern, seam));
        } else if (seam.second().size() == 1) {
            second = List.of(!first.get(0)); // side by side: the one against the outline
        } else if (seam.first().size() == 1) {
            first = List.of(!second.get(0));
        }
        boolean left = first.get(0);
        return new Sides(links(pattern, seam.first(), first, left), links(pattern, seam.second(), second, !left));
    }

    /** The paper must lie left of the way for all of the one side and right of it for all of the other. */
    private static List<Link> links(Pattern pattern, List<EdgeRef> side, List<Boolean> along, boolean facesUp) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < side.size(); i++) {
            Piece piece = pattern.piece(side.get(i).piece());
            links.add(new Link(piece, piece.edge(side.get(i).edge()), along.get(i), along.get(i) != facesUp));
        }
        return List.copyOf(links);
    }

    /** Whether the second edge starts where the first does, both along their outlines. */
    private static boolean startsTogether(Pattern pattern, Seam seam) {
        for (SeamEnds ends : SeamEnds.of(pattern)) {
            if (ends.first().equals(seam.first().get(0))
                    && ends.second().equals(seam.second().get(0))) {
                return ends.firstAtStart() == ends.secondAtStart();
            }
        }
        // A facing or lining lies on its piece as it is drawn; other edges that nothing is known of are laid side by
        // side.
        return pattern.piece(seam.second().get(0).piece()).kind().isFollower();
    }

    /** For a chain of edges, which way each is walked so that it goes on where the last one ended. */
    private static List<Boolean> directions(Pattern pattern, List<EdgeRef> side) {
        List<Boolean> along = new ArrayList<>();
        for (int i = 0; i < side.size(); i++) {
            if (i == 0) {
                along.add(side.size() == 1 || !meetsAtStart(pattern, side.get(0), side.get(1)));
            } else {
                along.add(meetsAtStart(pattern, side.get(i), side.get(i - 1)));
            }
        }
        return along;
    }

    /** Whether an edge meets its neighbour in the chain at the corner where it starts on its outline. */
    private static boolean meetsAtStart(Pattern pattern, EdgeRef edge, EdgeRef neighbour) {
        if (edge.piece().equals(neighbour.piece())) {
            Piece piece = pattern.piece(edge.piece());
            return piece.edge(edge.edge())
                    .path()
                    .start()
                    .isNear(piece.edge(neighbour.edge()).path().end(), Path.CHAIN_MM);
        }
        return rank(pattern, edge, true, neighbour) > rank(pattern, edge, false, neighbour);
    }

    /**
     * How likely the chain goes on at a corner: the edges beside must be of one role, sewn to each other; of an armhole that is so at both
     * ends, and it is walked over the shoulder.
     */
    private static int rank(Pattern pattern, EdgeRef edge, boolean atStart, EdgeRef neighbour) {
        Edge beside = SeamEnds.beside(pattern.piece(edge.piece()), edge.edge(), atStart);
        int best = 0;
        for (boolean otherAtStart : new boolean[] {true, false}) {
            Edge other = SeamEnds.beside(pattern.piece(neighbour.piece()), neighbour.edge(), otherAtStart);
            if (beside.role() == other.role() && beside.role() != EdgeRole.OTHER) {
                boolean sewn = isSewn(
                        pattern,
                        new EdgeRef(edge.piece(), beside.name()),
                        new EdgeRef(neighbour.piece(), other.name()));
                boolean over = beside.role() == EdgeRole.SHOULDER || beside.role() == EdgeRole.YOKE;
                best = Math.max(best, 1 + (sewn ? 2 : 0) + (over ? 1 : 0));
            }
        }
        return best;
    }

    private static boolean isSewn(Pattern pattern, EdgeRef one, EdgeRef other) {
        for (Seam seam : pattern.seams()) {
            if ((seam.first().contains(one) && seam.second().contains(other))
                    || (seam.first().contains(other) && seam.second().contains(one))) {
                return true;
            }
        }
        return false;
    }
}
