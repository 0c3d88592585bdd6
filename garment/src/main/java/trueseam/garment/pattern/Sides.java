package trueseam.garment.pattern;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.body.Side;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Mirror;

/**
 * Takes a pattern of half pieces apart into right and left, for a body whose sides differ: a piece that is altered on one side can
 * no longer be cut double (common practice).
 *
 * <p>The printed side of a piece is the outside of the garment: a front with its side seam to the right is then the wearer's left, a
 * back with its side seam to the right is her right, a sleeve with its front to the right is her right.
 *
 * <p>Laws: (1) a half piece becomes two pieces, each other's mirror image, named with {@code , right} and {@code , left} at the end,
 * cut once, on no fold; (2) what was the fold becomes a seam of the two, to be taped together or sewn; (3) whole pieces stay.
 */
public final class Sides {

    private static final double SAME_PLACE_MM = 1e-6;

    private Sides() {}

    /**
     * Splits a pattern.
     *
     * @param pattern the pattern
     * @return its pieces by side; the pattern itself if it has no half piece
     */
    public static Pattern split(Pattern pattern) {
        List<Piece> pieces = new ArrayList<>();
        Set<String> halves = new HashSet<>();
        List<Seam> seams = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.timesAround() == 1) {
                pieces.add(piece);
                continue;
            }
            halves.add(piece.name());
            Side drawn = drawnSide(piece);
            pieces.add(oneSide(piece, Side.RIGHT, drawn));
            pieces.add(oneSide(piece, Side.LEFT, drawn));
            piece.fold()
                    .ifPresent(fold -> seams.add(Seam.of(
                            fold,
                            new EdgeRef(nameOf(piece.name(), Side.RIGHT), fold),
                            new EdgeRef(nameOf(piece.name(), Side.LEFT), fold),
                            0)));
        }
        if (halves.isEmpty()) {
            return pattern;
        }
        for (Seam seam : pattern.seams()) {
            for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
                seams.add(new Seam(
                        nameOf(seam.name(), side),
                        refs(seam.first(), halves, side),
                        refs(seam.second(), halves, side),
                        seam.easeMm()));
            }
        }
        return new Pattern(
                pattern.name(), pattern.size(), pattern.sizeTable(), pattern.source(), pieces, seams, pattern.easeMm());
    }

    /**
     * Which side a piece is for.
     *
     * @param pieceName the name of the piece
     * @return nothing if it is for both
     */
    public static Optional<Side> of(String pieceName) {
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            if (pieceName.endsWith(", " + word(side))) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    private static String nameOf(String name, Side side) {
        return name + ", " + word(side);
    }

    private static String word(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static List<EdgeRef> refs(List<EdgeRef> refs, Set<String> halves, Side side) {
        return refs.stream()
                .map(ref -> halves.contains(ref.piece()) ? new EdgeRef(nameOf(ref.piece(), side), ref.edge()) : ref)
                .toList();
    }

    private static Side drawnSide(Piece piece) {
        if (piece.kind() == PieceKind.SLEEVE) {
            return isFrontCapToTheRight(piece) ? Side.RIGHT : Side.LEFT;
        }
        if (piece.kind().isSleeve()) {
            return Side.RIGHT; // both pieces of one sleeve are drawn for one arm
        }
        boolean sideToTheRight = piece.firstOf(EdgeRole.SIDE)
                .or(() -> piece.firstOf(EdgeRole.PANEL))
                .or(() -> piece.firstOf(EdgeRole.ARMHOLE))
                .map(edge -> edge.path().end().y() > edge.path().start().y())
                .orElse(true);
        return sideToTheRight == piece.kind().isBack() ? Side.RIGHT : Side.LEFT;
    }

    private static boolean isFrontCapToTheRight(Piece sleeve) {
        List<Edge> caps = sleeve.edgesOf(EdgeRole.CAP);
        for (Edge cap : caps) {
            if (cap.name().contains("front")) {
                boolean first = caps.stream()
                        .anyMatch(other -> cap.path().end().isNear(other.path().start(), SAME_PLACE_MM));
                return first;
            }
        }
        return true;
    }

    private static Piece oneSide(Piece piece, Side side, Side drawn) {
        Piece shown = side == drawn ? piece : mirrored(piece);
        return new Piece(
                nameOf(piece.name(), side),
                shown.kind(),
                1,
                Optional.empty(),
                shown.edges(),
                shown.darts(),
                shown.notches(),
                shown.landmarks(),
                shown.levels(),
                shown.markings(),
                shown.grain());
    }

    private static Piece mirrored(Piece piece) {
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            edges.add(0, edge.withPath(Mirror.of(edge.path()).reversed()));
        }
        List<Dart> darts =
                piece.darts().stream().map(dart -> mirrored(piece, dart)).toList();
        List<Notch> notches = piece.notches().stream()
                .map(notch -> new Notch(
                        notch.edge(), Math.max(0, piece.edge(notch.edge()).length() - notch.atMm()), notch.kind()))
                .toList();
        return new Piece(
                piece.name(),
                piece.kind(),
                piece.cutCount(),
                piece.fold(),
                edges,
                darts,
                notches,
                piece.landmarks().stream()
                        .map(landmark -> new Landmark(landmark.name(), Mirror.of(landmark.at())))
                        .toList(),
                piece.levels(),
                piece.markings().stream()
                        .map(marking -> new Marking(marking.name(), Mirror.of(marking.path())))
                        .toList(),
                new Grain(
                        Mirror.of(piece.grain().from()), Mirror.of(piece.grain().to())));
    }

    private static Dart mirrored(Piece piece, Dart dart) {
        if (dart instanceof Dart.EdgeDart d) {
            double whole = piece.edge(d.edge()).length();
            Point apex = Mirror.of(d.apex());
            return new Dart.EdgeDart(d.name(), d.edge(), Math.max(0, whole - d.toMm()), whole - d.fromMm(), apex);
        }
        Dart.DiamondDart d = (Dart.DiamondDart) dart;
        return new Dart.DiamondDart(
                d.name(), Mirror.of(d.top()), Mirror.of(d.bottom()), Mirror.of(d.right()), Mirror.of(d.left()));
    }
}
