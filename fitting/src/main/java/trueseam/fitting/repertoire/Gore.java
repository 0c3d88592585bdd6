package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.tissue.Place;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;

/**
 * A gore of a half skirt between the seam towards the centre and the seam towards the side. A front or back in one piece is one gore.
 *
 * @param piece the piece
 * @param inner the centre, or the seam towards it
 * @param outer the side seam, or the seam towards it
 */
record Gore(Piece piece, SeamLine inner, SeamLine outer) {

    /** Fronts and backs of skirts, in one piece and in gores. */
    static final Set<PieceKind> SKIRTS = Set.of(
            PieceKind.SKIRT_FRONT,
            PieceKind.SKIRT_BACK,
            PieceKind.SKIRT_CENTRE_FRONT,
            PieceKind.SKIRT_SIDE_FRONT,
            PieceKind.SKIRT_CENTRE_BACK,
            PieceKind.SKIRT_SIDE_BACK);

    private static final Set<EdgeRole> DOWNWARDS = Set.of(EdgeRole.SIDE, EdgeRole.PANEL);

    /**
     * The half fronts and backs of a skirt, each from its centre to its side seam.
     *
     * @throws AlterationException if the gores of one do not follow on each other from centre to side
     */
    static List<List<Gore>> halves(Pattern pattern, Predicate<PieceKind> which) {
        List<List<Gore>> halves = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind().isSkirt()
                    && which.test(piece.kind())
                    && piece.firstOf(EdgeRole.CENTRE).isPresent()) {
                halves.add(half(pattern, piece));
            }
        }
        return halves;
    }

    /** Whether what other skirts have in one piece is in gores here. */
    static boolean isInGores(Pattern pattern, Predicate<PieceKind> which) {
        return pattern.pieces().stream()
                .map(Piece::kind)
                .anyMatch(kind -> kind.isSkirt() && kind.isPart() && which.test(kind));
    }

    private static List<Gore> half(Pattern pattern, Piece centre) {
        List<Gore> half = new ArrayList<>();
        half.add(of(centre, centre.only(EdgeRole.CENTRE)));
        while (half.get(half.size() - 1).outer().edge.role() == EdgeRole.PANEL) {
            Gore last = half.get(half.size() - 1);
            EdgeRef across = across(
                            pattern,
                            new EdgeRef(last.piece().name(), last.outer().edge.name()))
                    .orElseThrow(() -> unlike(last.piece()));
            Piece next = pattern.piece(across.piece());
            half.add(of(next, next.edge(across.edge())));
        }
        return half;
    }

    private static Gore of(Piece piece, Edge inner) {
        List<Edge> outer = piece.edges().stream()
                .filter(edge -> DOWNWARDS.contains(edge.role()) && !edge.name().equals(inner.name()))
                .toList();
        if (outer.size() != 1) {
            throw unlike(piece);
        }
        return new Gore(piece, new SeamLine(piece, inner), new SeamLine(piece, outer.get(0)));
    }

    private static AlterationException unlike(Piece piece) {
        return new AlterationException(
                piece.name(),
                "panel seam",
                0,
                "the gores do not follow on each other from the centre to the side; name their edges and seams.");
    }

    private static Optional<EdgeRef> across(Pattern pattern, EdgeRef ref) {
        for (Seam seam : pattern.seams()) {
            if (seam.first().equals(List.of(ref)) && seam.second().size() == 1) {
                return Optional.of(seam.second().get(0));
            }
            if (seam.second().equals(List.of(ref)) && seam.first().size() == 1) {
                return Optional.of(seam.first().get(0));
            }
        }
        return Optional.empty();
    }

    Place hip(SeamLine seam) {
        return seam.at(LevelName.HIP, "hip at the " + word(seam));
    }

    Place top(SeamLine seam) {
        return seam.top("waist at the " + word(seam));
    }

    private static String word(SeamLine seam) {
        return switch (seam.edge.role()) {
            case SIDE -> "side seam";
            case CENTRE -> "centre";
            default -> "panel seam";
        };
    }

    boolean isAtCentre() {
        return inner.edge.role() == EdgeRole.CENTRE;
    }

    boolean isAtSide() {
        return outer.edge.role() == EdgeRole.SIDE;
    }

    /** How wide it is at the waist, straight across. */
    double waistWidth() {
        return Math.abs(top(outer).on(piece).x() - top(inner).on(piece).x());
    }
}
