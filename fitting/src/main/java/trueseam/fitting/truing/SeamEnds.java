package trueseam.fitting.truing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Where two pieces meet at an end of a seam: the corner of each, found by the role of the edge beside the seam, so that it does not
 * matter which way either piece is drawn.
 *
 * @param seam the seam
 * @param beside the role of the edges that run on into each other across the seam
 * @param first the seam edge of the first piece
 * @param firstAtStart whether its corner is where that edge starts
 * @param second the seam edge of the second piece
 * @param secondAtStart whether its corner is where that edge starts
 */
public record SeamEnds(
        String seam, EdgeRole beside, EdgeRef first, boolean firstAtStart, EdgeRef second, boolean secondAtStart) {

    /**
     * The ends of all seams of one edge with one edge.
     *
     * @param pattern the pattern
     * @return two for each such seam, fewer where the edges beside do not match
     */
    public static List<SeamEnds> of(Pattern pattern) {
        List<SeamEnds> found = new ArrayList<>();
        for (Seam seam : pattern.seams()) {
            if (seam.first().size() != 1 || seam.second().size() != 1) {
                continue;
            }
            EdgeRef first = seam.first().get(0);
            EdgeRef second = seam.second().get(0);
            if (pattern.piece(second.piece()).kind().isFollower()) {
                continue; // it lies on the other piece and does not run on from it
            }
            for (boolean firstAtStart : new boolean[] {true, false}) {
                EdgeRole role = beside(pattern.piece(first.piece()), first.edge(), firstAtStart)
                        .role();
                Piece other = pattern.piece(second.piece());
                boolean start =
                        isBeside(role, beside(other, second.edge(), true).role());
                boolean end = isBeside(role, beside(other, second.edge(), false).role());
                if (start != end) {
                    found.add(new SeamEnds(seam.name(), role, first, firstAtStart, second, start));
                }
            }
        }
        return List.copyOf(found);
    }

    private static boolean isBeside(EdgeRole a, EdgeRole b) {
        return a == b && a != EdgeRole.OTHER;
    }

    /**
     * What a dressmaker calls this end.
     *
     * @return for example {@code underarm}
     */
    public String word() {
        return switch (beside) {
            case ARMHOLE -> endAtArmhole(seam.toLowerCase(Locale.ROOT));
            case CAP -> "sleeve underarm";
            case NECK -> "neck point";
            case WAIST -> "side waist";
            case HEM -> "hem";
            case WRIST -> "wrist";
            case CROTCH -> "crotch point";
            case RAGLAN -> seam.toLowerCase(Locale.ROOT).contains("side") ? "underarm" : "sleeve underarm";
            case OVERARM -> "shoulder point";
            case CENTRE, SHOULDER, SIDE, UNDERARM, INSEAM, PANEL, YOKE, OTHER -> beside.word();
        };
    }

    private static String endAtArmhole(String seam) {
        return seam.contains("shoulder") ? "shoulder point" : seam.contains("yoke") ? "armhole" : "underarm";
    }

    /**
     * The edge that meets an end of a seam edge.
     *
     * @param piece the piece
     * @param edge the seam edge
     * @param atStart whether at the end where it starts
     * @return the edge before or after it in the outline
     */
    public static Edge beside(Piece piece, String edge, boolean atStart) {
        int n = piece.edges().size();
        int i = piece.indexOf(edge);
        return piece.edges().get(atStart ? (i + n - 1) % n : (i + 1) % n);
    }

    /**
     * The corner on the first piece.
     *
     * @param pattern the pattern, before or after altering
     * @return where it is
     */
    public Point firstCorner(Pattern pattern) {
        return corner(pattern.piece(first.piece()), first.edge(), firstAtStart);
    }

    /**
     * The corner on the second piece.
     *
     * @param pattern the pattern, before or after altering
     * @return where it is
     */
    public Point secondCorner(Pattern pattern) {
        return corner(pattern.piece(second.piece()), second.edge(), secondAtStart);
    }

    static Point corner(Piece piece, String edge, boolean atStart) {
        return atStart
                ? piece.edge(edge).path().start()
                : piece.edge(edge).path().end();
    }

    /**
     * How far the two edges beside the seam are from running on into each other when the seam is sewn.
     *
     * @param pattern the pattern, before or after altering
     * @return the two inner angles less a straight angle, radians; 0 is smooth, plus is a point outwards
     */
    public double bendRad(Pattern pattern) {
        return innerAngle(pattern.piece(first.piece()), first.edge(), firstAtStart)
                + innerAngle(pattern.piece(second.piece()), second.edge(), secondAtStart)
                - Math.PI;
    }

    /** The angle inside the piece between a seam edge and the edge beside it. */
    static double innerAngle(Piece piece, String edge, boolean atStart) {
        Edge here = piece.edge(edge);
        Edge other = beside(piece, edge, atStart);
        Vec in = atStart ? other.path().endTangent() : here.path().endTangent();
        Vec out = atStart ? here.path().startTangent() : other.path().startTangent();
        return Math.PI - in.angleTo(out);
    }
}
