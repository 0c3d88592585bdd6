package trueseam.garment.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import trueseam.garment.measure.Measure;

/**
 * A sewing pattern in one size: its pieces, the seams that join them, and what its maker says of it.
 *
 * <p>Laws: (1) names of pieces are unique; (2) every seam joins edges that are there.
 *
 * @param name what it is called
 * @param size the size that was traced, or empty if unknown
 * @param sizeTable name of the table that the size belongs to, or empty if unknown
 * @param source where it comes from, in one sentence
 * @param pieces its pieces
 * @param seams its seams
 * @param easeMm ease that the pattern was drawn with, by measure, mm; empty where unknown
 */
public record Pattern(
        String name,
        String size,
        String sizeTable,
        String source,
        List<Piece> pieces,
        List<Seam> seams,
        Map<Measure, Double> easeMm) {

    // Checks the laws.
    public Pattern {
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        Map<Measure, Double> ease = new TreeMap<>();
        for (Map.Entry<Measure, Double> entry : easeMm.entrySet()) {
            if (!(Math.abs(entry.getValue()) <= Double.MAX_VALUE)) {
                throw new IllegalArgumentException("Pattern \"" + name + "\": an ease of " + entry.getValue()
                        + " mm at " + entry.getKey().term() + " is no length; give a number.");
            }
            ease.put(entry.getKey(), entry.getValue() + 0.0); // -0.0 and 0.0 are one ease
        }
        easeMm = Collections.unmodifiableMap(ease);
        if (pieces.isEmpty()) {
            throw new PatternException(name, "a pattern needs at least one piece.");
        }
        Set<String> names = new HashSet<>();
        for (Piece piece : pieces) {
            if (!names.add(piece.name())) {
                throw new PatternException(piece.name(), "two pieces have this name; names must differ.");
            }
        }
        for (Seam seam : seams) {
            List<EdgeRef> all = new ArrayList<>(seam.first());
            all.addAll(seam.second());
            for (EdgeRef ref : all) {
                if (!names.contains(ref.piece())) {
                    throw new PatternException(
                            ref.piece(), "seam \"" + seam.name() + "\" names this piece, which is not there.");
                }
                for (Piece piece : pieces) {
                    if (piece.name().equals(ref.piece())) {
                        piece.edge(ref.edge());
                    }
                }
            }
        }
    }

    /**
     * The piece of a name.
     *
     * @param pieceName its name
     * @return the piece
     * @throws PatternException if there is none of that name
     */
    public Piece piece(String pieceName) {
        for (Piece piece : pieces) {
            if (piece.name().equals(pieceName)) {
                return piece;
            }
        }
        throw new PatternException(
                pieceName,
                "the pattern has no such piece; it has "
                        + pieces.stream().map(Piece::name).toList() + ".");
    }

    /**
     * The first piece of a kind.
     *
     * @param kind what it is
     * @return the piece, or nothing if the pattern has none
     */
    public Optional<Piece> firstOf(PieceKind kind) {
        for (Piece piece : pieces) {
            if (piece.kind() == kind) {
                return Optional.of(piece);
            }
        }
        return Optional.empty();
    }

    /**
     * The length of one side of a seam as sewn, dart mouths left out.
     *
     * @param side the edges of that side
     * @return mm
     */
    public double sewnLength(List<EdgeRef> side) {
        double mm = 0;
        for (EdgeRef ref : side) {
            mm += piece(ref.piece()).sewnLength(ref.edge());
        }
        return mm;
    }

    /**
     * How far a seam is from what was intended.
     *
     * @param seam one of the seams
     * @return sewn length of the second side less that of the first less the intended ease, mm
     */
    public double mismatchMm(Seam seam) {
        return sewnLength(seam.second()) - sewnLength(seam.first()) - seam.easeMm();
    }

    /**
     * The pattern with other pieces of the same names.
     *
     * @param changed pieces that replace those of their names
     * @return the changed pattern
     */
    public Pattern withPieces(List<Piece> changed) {
        List<Piece> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Piece taken = piece;
            for (Piece other : changed) {
                if (other.name().equals(piece.name())) {
                    taken = other;
                }
            }
            all.add(taken);
        }
        return new Pattern(name, size, sizeTable, source, all, seams, easeMm);
    }
}
