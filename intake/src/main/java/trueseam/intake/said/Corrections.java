package trueseam.intake.said;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import trueseam.garment.pattern.EdgeRef;

/**
 * What somebody says about a drawing, where she knows better than what is proposed.
 *
 * @param pieces about its pieces, at most one for a number, in order
 * @param seams about its seams
 */
public record Corrections(List<PieceCorrection> pieces, List<SeamSaid> seams) {

    /** Everything is as proposed. */
    public static final Corrections NONE = new Corrections(List.of(), List.of());

    /** Does not change. */
    public Corrections {
        pieces = pieces.stream()
                .sorted(Comparator.comparingInt(PieceCorrection::number))
                .toList();
        seams = List.copyOf(seams);
    }

    /**
     * Whether nothing is said.
     *
     * @return true if everything is as proposed
     */
    public boolean isEmpty() {
        return pieces.stream().allMatch(PieceCorrection::isEmpty) && seams.isEmpty();
    }

    /**
     * What is said about a piece.
     *
     * @param number its place in the drawing, from 1
     * @return what is said, perhaps nothing
     */
    public PieceCorrection piece(int number) {
        return pieces.stream().filter(p -> p.number() == number).findFirst().orElse(PieceCorrection.of(number));
    }

    /**
     * Something else is said about a piece.
     *
     * @param piece all that is said about it now
     * @return the corrections
     */
    public Corrections with(PieceCorrection piece) {
        List<PieceCorrection> all = new ArrayList<>(pieces);
        all.removeIf(p -> p.number() == piece.number());
        all.add(piece);
        return new Corrections(all, seams);
    }

    /**
     * Something is said about a seam; it goes before what was said about the same edges.
     *
     * @param seam what
     * @return the corrections
     */
    public Corrections with(SeamSaid seam) {
        List<SeamSaid> all = new ArrayList<>(seams);
        all.removeIf(seam::isSameEdges);
        all.add(seam);
        return new Corrections(pieces, all);
    }

    /**
     * What is said about a seam.
     *
     * @param seam one of the same edges
     * @return what is said, if anything is
     */
    public Optional<SeamSaid> about(SeamSaid seam) {
        return seams.stream().filter(seam::isSameEdges).findFirst();
    }

    /**
     * The same where an edge, or a piece, has another name.
     *
     * @param how the new name of an edge; the same where it has none
     * @return the corrections, their seams between the edges of the new names
     */
    public Corrections renamed(UnaryOperator<EdgeRef> how) {
        return new Corrections(
                pieces,
                seams.stream()
                        .map(s -> new SeamSaid(
                                s.name(),
                                s.first().stream().map(how).toList(),
                                s.second().stream().map(how).toList(),
                                s.easeMm(),
                                s.sewn()))
                        .toList());
    }

    /**
     * The same without what is said about the seams of a piece.
     *
     * @param piece the piece's name
     * @return the corrections
     */
    public Corrections withoutSeamsOf(String piece) {
        return new Corrections(
                pieces,
                seams.stream()
                        .filter(s -> Stream.concat(s.first().stream(), s.second().stream())
                                .noneMatch(r -> r.piece().equals(piece)))
                        .toList());
    }
}
