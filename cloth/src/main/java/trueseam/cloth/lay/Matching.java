package trueseam.cloth.lay;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;

/**
 * Where stripes and plaids are to run on, from piece to piece: at the stitching line of seams, not at the cut edge (trade.md section 9). Of a
 * side, panel or leg seam its lower end matches; of any other the end where it begins. From one piece on, each piece is matched at the first seam
 * that leads to it; a seam that closes a ring cannot be matched as well, and is said. Across the cloth every grainline lies on a stripe.
 */
final class Matching {

    private final Map<String, StripeMatch> matches = new HashMap<>();

    private Matching() {}

    /** Matches the pieces of a pattern that are laid. */
    static Matching of(List<Piece> pieces, List<Seam> seams, List<Finding> findings) {
        Map<String, Piece> byName = new HashMap<>();
        pieces.forEach(p -> byName.put(p.name(), p));
        Matching matching = new Matching();
        List<Seam> open = new ArrayList<>(seams.stream()
                .filter(s -> byName.containsKey(s.first().get(0).piece())
                        && byName.containsKey(s.second().get(0).piece()))
                .toList());
        // Long seams are seen most: those that run along the grain first.
        open.sort(java.util.Comparator.comparingInt(
                s -> runsAlong(edge(byName, s.first().get(0))) ? 0 : 1));
        for (Piece piece : pieces) {
            if (!matching.matches.containsKey(piece.name())) {
                matching.matches.put(piece.name(), new StripeMatch(piece.grain().from(), 0));
                matching.spread(piece.name(), open, byName);
            }
        }
        open.forEach(s -> findings.add(Finding.note(
                s.name(), "The stripes do not match at it too: its pieces are matched at other seams already.")));
        return matching;
    }

    private void spread(String from, List<Seam> open, Map<String, Piece> byName) {
        Deque<String> reached = new ArrayDeque<>(List.of(from));
        while (!reached.isEmpty()) {
            String here = reached.poll();
            for (Seam seam : List.copyOf(open)) {
                EdgeRef a = seam.first().get(0);
                EdgeRef b = seam.second().get(0);
                if (a.piece().equals(here) == b.piece().equals(here)) {
                    continue;
                }
                EdgeRef mine = a.piece().equals(here) ? a : b;
                EdgeRef other = a.piece().equals(here) ? b : a;
                if (matches.containsKey(other.piece())) {
                    continue;
                }
                Piece piece = byName.get(here);
                StripeMatch known = matches.get(here);
                Point at = place(edge(byName, mine));
                double along = known.alongMm() + along(piece, at) - along(piece, known.at());
                matches.put(other.piece(), new StripeMatch(place(edge(byName, other)), along));
                open.remove(seam);
                reached.add(other.piece());
            }
        }
    }

    /** What a piece is matched by. */
    Optional<StripeMatch> of(Piece piece) {
        return Optional.ofNullable(matches.get(piece.name()));
    }

    private static Edge edge(Map<String, Piece> byName, EdgeRef ref) {
        return byName.get(ref.piece()).edge(ref.edge());
    }

    private static boolean runsAlong(Edge edge) {
        return switch (edge.role()) {
            case CENTRE, SIDE, UNDERARM, INSEAM, PANEL -> true;
            case NECK, SHOULDER, ARMHOLE, WAIST, HEM, CAP, WRIST, CROTCH, YOKE, RAGLAN, OVERARM, OTHER -> false;
        };
    }

    private static Point place(Edge edge) {
        Point a = edge.path().start();
        Point b = edge.path().end();
        return runsAlong(edge) ? (a.y() <= b.y() ? a : b) : a;
    }

    /** How far up the grain a place lies. */
    static double along(Piece piece, Point p) {
        Point from = piece.grain().from();
        Point to = piece.grain().to();
        return ((p.x() - from.x()) * (to.x() - from.x()) + (p.y() - from.y()) * (to.y() - from.y()))
                / from.distanceTo(to);
    }
}
