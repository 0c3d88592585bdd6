package trueseam.intake.said;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import trueseam.garment.pattern.PieceKind;

/**
 * What is said about one piece of a drawing; what is empty is as proposed.
 *
 * @param number its place in the drawing, the largest piece being 1
 * @param frame where it lies and how large it is, by which it is known again; empty: by its number alone
 * @param kind what it is
 * @param name what it is called
 * @param cut how many of it are cut
 * @param fold the edge on the fold; an empty text: none is
 * @param line which line is taken for what
 * @param allowanceMm how wide the seam allowance is, mm: between the lines of a cutting line, else outside the stitching line
 * @param leftOut whether it is no piece
 * @param edges which edge is which
 * @param marks what is a dart or a notch, and what is not
 */
public record PieceCorrection(
        int number,
        Optional<Frame> frame,
        Optional<PieceKind> kind,
        Optional<String> name,
        OptionalInt cut,
        Optional<String> fold,
        Optional<LineTaken> line,
        OptionalDouble allowanceMm,
        boolean leftOut,
        List<EdgeSaid> edges,
        List<MarkSaid> marks) {

    /** Does not change. */
    public PieceCorrection {
        edges = List.copyOf(edges);
        marks = List.copyOf(marks);
    }

    /**
     * Nothing said.
     *
     * @param number the piece's place in the drawing, from 1
     * @return nothing
     */
    public static PieceCorrection of(int number) {
        return new PieceCorrection(
                number,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                false,
                List.of(),
                List.of());
    }

    /**
     * A name without the signs that part names from each other where they are written.
     *
     * @param name any text
     * @return the name; may be empty
     */
    public static String plainName(String name) {
        return name.replaceAll("[;/+#:\\p{Cntrl}]", " ").replaceAll("\\s+", " ").strip();
    }

    /**
     * Whether it says nothing.
     *
     * @return true if everything is as proposed
     */
    public boolean isEmpty() {
        return this.with(Optional.empty()).equals(of(number));
    }

    private PieceCorrection with(Optional<Frame> other) {
        return new PieceCorrection(number, other, kind, name, cut, fold, line, allowanceMm, leftOut, edges, marks);
    }

    /**
     * The same about a piece that lies elsewhere in the drawing.
     *
     * @param other its number
     * @param there its frame
     * @return the correction
     */
    public PieceCorrection at(int other, Frame there) {
        return new PieceCorrection(
                other, Optional.of(there), kind, name, cut, fold, line, allowanceMm, leftOut, edges, marks);
    }

    /**
     * It is of another kind; what was said about its edges and fold goes, because another piece has other edges.
     *
     * @param other the kind
     * @return the correction
     */
    public PieceCorrection asKind(PieceKind other) {
        return new PieceCorrection(
                number,
                frame,
                Optional.of(other),
                Optional.empty(),
                cut,
                Optional.empty(),
                line,
                allowanceMm,
                false,
                List.of(),
                marks);
    }

    /**
     * It is called otherwise.
     *
     * @param other the name
     * @return the correction
     */
    public PieceCorrection called(String other) {
        return new PieceCorrection(
                number, frame, kind, Optional.of(other), cut, fold, line, allowanceMm, leftOut, edges, marks);
    }

    /**
     * Another number of it is cut.
     *
     * @param count how many
     * @return the correction
     */
    public PieceCorrection cut(int count) {
        return new PieceCorrection(
                number, frame, kind, name, OptionalInt.of(count), fold, line, allowanceMm, leftOut, edges, marks);
    }

    /**
     * An edge lies on the fold.
     *
     * @param edge the edge; an empty text: none does
     * @return the correction
     */
    public PieceCorrection onFold(String edge) {
        return new PieceCorrection(
                number, frame, kind, name, cut, Optional.of(edge), line, allowanceMm, leftOut, edges, marks);
    }

    /**
     * Its lines are taken otherwise.
     *
     * @param taken which line is what
     * @param mm the seam allowance, mm; empty: as usual
     * @return the correction
     */
    public PieceCorrection drawnAs(LineTaken taken, OptionalDouble mm) {
        return new PieceCorrection(number, frame, kind, name, cut, fold, Optional.of(taken), mm, leftOut, edges, marks);
    }

    /**
     * It is a piece, or it is none.
     *
     * @param out whether it is left out
     * @return the correction
     */
    public PieceCorrection leftOut(boolean out) {
        return new PieceCorrection(number, frame, kind, name, cut, fold, line, allowanceMm, out, edges, marks);
    }

    /**
     * A stretch is an edge; it goes before what was said of the same stretch.
     *
     * @param edge the edge
     * @return the correction
     */
    public PieceCorrection with(EdgeSaid edge) {
        List<EdgeSaid> all = new ArrayList<>(edges);
        all.removeIf(edge::isSameStretch);
        all.add(edge);
        return withEdges(all);
    }

    /**
     * Only these edges are said.
     *
     * @param all the edges
     * @return the correction
     */
    public PieceCorrection withEdges(List<EdgeSaid> all) {
        return new PieceCorrection(number, frame, kind, name, cut, fold, line, allowanceMm, leftOut, all, marks);
    }

    /**
     * Something drawn is a dart or a notch, or is none.
     *
     * @param mark what
     * @return the correction
     */
    public PieceCorrection with(MarkSaid mark) {
        List<MarkSaid> all = new ArrayList<>(marks);
        all.removeIf(mark::isSameMark);
        all.add(mark);
        return new PieceCorrection(number, frame, kind, name, cut, fold, line, allowanceMm, leftOut, edges, all);
    }
}
