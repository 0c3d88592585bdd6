package trueseam.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;

/**
 * Draws lines beside lines.
 *
 * <pre>{@code
 *      a'------m        a' is d1 beside the first edge, b' is d2 beside the second;
 *      a----p  |        m, where the two new lines meet, is the mitre.
 *           |  |        Farther from p than the mitre limit allows: cut off square.
 *           b  b'
 * }</pre>
 *
 * Laws: (1) every point of the result that is not at a corner has the distance to the source; (2) an outline around a piece
 * is simple, closed and walked as the piece is; (3) an allowance of 0 gives back the piece.
 */
public final class Offset {

    /** The usual mitre limit: a corner is cut off square where it would reach farther than three allowances. */
    public static final double MITRE_LIMIT = 3;

    /** No allowance is wider than this, mm: anything beyond is a mistake of units. */
    static final double LARGEST_MM = 1000;

    private Offset() {}

    /**
     * The line at a distance beside a path, corners mitred to {@link #MITRE_LIMIT}. Where the very end of an open path bends
     * tighter than the distance, the new line ends up to a hundredth of the distance too near.
     *
     * @param path open or closed
     * @param distanceMm mm to the right of travel, so outwards if the path is an outline walked anticlockwise; negative to
     *     the left
     * @param toleranceMm how far the result may lie from the true line, mm
     * @return the line, walked as the path is; closed if the path is
     * @throws GeometryException if nothing is left of it, or it falls into parts
     */
    public static Path of(Path path, double distanceMm, double toleranceMm) {
        return of(path, distanceMm, MITRE_LIMIT, toleranceMm);
    }

    /**
     * The line at a distance beside a path.
     *
     * @param path open or closed
     * @param distanceMm mm to the right of travel; negative to the left
     * @param mitreLimit how many distances a corner may reach from its source, at least 1
     * @param toleranceMm how far the result may lie from the true line, mm
     * @return the line, walked as the path is; closed if the path is
     * @throws GeometryException if nothing is left of it, or it falls into parts
     */
    public static Path of(Path path, double distanceMm, double mitreLimit, double toleranceMm) {
        check(mitreLimit, toleranceMm);
        List<Margin> margins = List.of(new Margin(path, distanceMm));
        if (!path.isClosed()) {
            Optional<Path> plain = OffsetChain.open(margins, mitreLimit, toleranceMm);
            return plain.orElseGet(() -> ChordOffset.open(path, distanceMm, mitreLimit, toleranceMm));
        }
        boolean anticlockwise = path.signedArea() > 0;
        return around(List.of(new Margin(path, anticlockwise ? distanceMm : -distanceMm)), mitreLimit, toleranceMm);
    }

    /**
     * The line around a piece whose edges have each their own allowance, corners mitred to {@link #MITRE_LIMIT}: a cutting
     * line from stitching lines.
     *
     * @param margins the edges in order round the piece, each beginning where the last ends, the first where the last of all
     *     ends
     * @param toleranceMm how far the result may lie from the true line, mm
     * @return a simple closed path, walked as the piece is
     * @throws GeometryException if the chain is open or crosses itself, or nothing is left of it, or it falls into parts
     */
    public static Path outline(List<Margin> margins, double toleranceMm) {
        return outline(margins, MITRE_LIMIT, toleranceMm);
    }

    /**
     * The line around a piece whose edges have each their own allowance.
     *
     * @param margins the edges in order round the piece, each beginning where the last ends
     * @param mitreLimit how many allowances (the wider of the two) a corner may reach from its source, at least 1
     * @param toleranceMm how far the result may lie from the true line, mm
     * @return a simple closed path, walked as the piece is
     * @throws GeometryException if the chain is open or crosses itself, or nothing is left of it, or it falls into parts
     */
    public static Path outline(List<Margin> margins, double mitreLimit, double toleranceMm) {
        check(mitreLimit, toleranceMm);
        return around(margins, mitreLimit, toleranceMm);
    }

    private static Path around(List<Margin> margins, double mitreLimit, double toleranceMm) {
        Path piece = chain(margins);
        if (!piece.isClosed()) {
            throw new GeometryException("The edges do not close: the last ends at " + piece.end()
                    + " and the first begins at " + piece.start() + "; an outline needs edges all round.");
        }
        // To the right is outwards only when walked anticlockwise.
        int side = piece.signedArea() < 0 ? -1 : 1;
        List<Margin> right = new ArrayList<>(margins.size());
        for (Margin m : margins) {
            right.add(new Margin(m.line(), side * m.distanceMm()));
        }
        Optional<Path> plain = OffsetChain.closed(right, mitreLimit, toleranceMm);
        return plain.orElseGet(() -> ChordOffset.closed(piece, right, mitreLimit, toleranceMm));
    }

    private static Path chain(List<Margin> margins) {
        if (margins.isEmpty()) {
            throw new GeometryException("An outline needs at least one edge.");
        }
        Path all = margins.get(0).line();
        for (Margin m : margins.subList(1, margins.size())) {
            all = all.then(m.line());
        }
        return all;
    }

    private static void check(double mitreLimit, double toleranceMm) {
        if (!(mitreLimit >= 1)) {
            throw new GeometryException(
                    "A mitre limit of " + mitreLimit + " is below 1: no corner could reach its distance.");
        }
        if (!(toleranceMm >= Path.CHAIN_MM)) {
            throw new GeometryException(
                    "A line beside a line cannot be drawn to " + toleranceMm + " mm; give at least 1e-6 mm.");
        }
    }
}
