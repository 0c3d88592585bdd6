package trueseam.intake.bring;

import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;

/**
 * One piece of a drawing as it was brought in, with how sure everything about it is.
 *
 * @param number its place in the drawing, the largest piece being 1
 * @param frame where it lies in the drawing and how large it is
 * @param outline its outermost line as drawn
 * @param piece the piece; empty if it is left out
 * @param kind what it is
 * @param others what else it may be, the likelier first
 * @param ask what only she can tell, as a question; empty if there is nothing
 * @param line which of its lines is taken for what
 * @param hasInner whether a second line runs inside the first
 * @param allowanceMm how wide its seam allowance is, mm; of two lines, what lies between them in the mean
 * @param edges its edges, in the order of the piece
 * @param fold the edge on the fold; an empty text if none is
 * @param cut how many are cut
 * @param marks what was taken for darts and notches, and what was said not to be
 * @param lies how it came to lie upright
 */
public record BroughtPiece(
        int number,
        Frame frame,
        Path outline,
        Optional<Piece> piece,
        Sure<PieceKind> kind,
        List<PieceKind> others,
        String ask,
        Sure<LineTaken> line,
        boolean hasInner,
        double allowanceMm,
        List<BroughtEdge> edges,
        Sure<String> fold,
        Sure<Integer> cut,
        List<BroughtMark> marks,
        Upright lies) {

    /** Does not change. */
    public BroughtPiece {
        others = List.copyOf(others);
        edges = List.copyOf(edges);
        marks = List.copyOf(marks);
    }

    /**
     * What it is called.
     *
     * @return the piece's name; of one that is left out its number
     */
    public String name() {
        return piece.map(Piece::name).orElse("piece " + number);
    }

    /**
     * The answers to what is asked.
     *
     * @return what it was taken for and the kind that looks alike; none where nothing is asked
     */
    public List<PieceKind> answers() {
        return ask.isEmpty()
                ? List.of()
                : List.of(kind.value(), PieceNaming.otherSide(kind.value()).orElseThrow());
    }

    /**
     * An edge.
     *
     * @param name what it is called, with how sure that is
     * @param role what it is
     * @param from where it begins, in the piece's frame
     * @param to where it ends
     * @param longMm how long it is, mm
     * @param line where it runs, in the piece's frame
     */
    public record BroughtEdge(Sure<String> name, EdgeRole role, Point from, Point to, double longMm, Path line) {

        /**
         * The same in the words of a correction.
         *
         * @return what would have to be said for it
         */
        public EdgeSaid asSaid() {
            return new EdgeSaid(name.value(), role, from, to, java.util.OptionalDouble.of(longMm));
        }
    }

    /**
     * A dart or a notch.
     *
     * @param what which of the two
     * @param edge the edge that it is on; empty if it was said to be none
     * @param at its tip or middle, in the piece's frame
     * @param is whether it is one
     */
    public record BroughtMark(MarkSaid.What what, String edge, Point at, Sure<Boolean> is) {

        /**
         * The same in the words of a correction.
         *
         * @return what would have to be said for it
         */
        public MarkSaid asSaid() {
            return new MarkSaid(what, at, is.value());
        }
    }
}
