package trueseam.garment.flat;

import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Line;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * The width of a piece across the grain at a height, from outline to outline, without what darts take up there.
 *
 * @param left left end on the outline
 * @param right right end on the outline
 * @param dartsMm taken up by darts at that height, mm
 */
public record Span(Point left, Point right, double dartsMm) {

    private static final Vec ACROSS = new Vec(1, 0);

    /**
     * Lays the ruler across a piece; of a kimono from the centre to the side seam, for what hangs beside it is the sleeve.
     *
     * @param piece the piece
     * @param y the height, mm
     * @return the span between the outermost crossings, or nothing if the piece does not reach that height
     */
    public static Optional<Span> at(Piece piece, double y) {
        Point through = new Point(0, y);
        Point left = null;
        Point right = null;
        for (Edge edge : piece.edges()) {
            List<PathPlace> places =
                    isOfSleeve(piece, edge) ? List.of() : edge.path().crossings(through, ACROSS);
            for (PathPlace place : places) {
                Point p = place.point();
                left = left == null || p.x() < left.x() ? p : left;
                right = right == null || p.x() > right.x() ? p : right;
            }
        }
        if (left == null || right == null || (piece.kind().isKimono() && left.equals(right))) {
            return Optional.empty();
        }
        return Optional.of(new Span(left, right, intakeAt(piece, y)));
    }

    private static boolean isOfSleeve(Piece piece, Edge edge) {
        EdgeRole role = edge.role();
        return piece.kind().isKimono()
                && (role == EdgeRole.UNDERARM || role == EdgeRole.WRIST || role == EdgeRole.OVERARM);
    }

    /**
     * What the ruler reads when the darts are folded out.
     *
     * @return mm
     */
    public double widthMm() {
        return right.x() - left.x() - dartsMm;
    }

    private static double intakeAt(Piece piece, double y) {
        double sum = 0;
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.DiamondDart d) {
                sum += widthOf(d.corners(), y);
            } else if (dart instanceof Dart.EdgeDart d && crossesUpright(piece.edge(d.edge()))) {
                Edge edge = piece.edge(d.edge());
                sum += widthOf(
                        List.of(
                                edge.path().pointAt(d.fromMm()),
                                d.apex(),
                                edge.path().pointAt(d.toMm())),
                        y);
            }
        }
        return sum;
    }

    /** A dart in a side edge lies along the ruler: the ruler passes above it, and it takes no width. */
    private static boolean crossesUpright(Edge edge) {
        return edge.role() != EdgeRole.SIDE && edge.role() != EdgeRole.ARMHOLE;
    }

    private static double widthOf(List<Point> corners, double y) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        Point through = new Point(0, y);
        for (int i = 0; i < corners.size(); i++) {
            Line side = new Line(corners.get(i), corners.get((i + 1) % corners.size()));
            for (double t : side.crossings(through, ACROSS)) {
                double x = side.at(t).x();
                least = Math.min(least, x);
                most = Math.max(most, x);
            }
        }
        return most > least ? most - least : 0;
    }
}
