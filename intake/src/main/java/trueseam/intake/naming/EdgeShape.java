package trueseam.intake.naming;

import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * What can be seen of one edge in its upright piece.
 *
 * @param chordRad direction from its start to its end
 * @param bulge area between the edge and its chord over the chord squared; positive where it bulges outwards
 * @param share of the whole outline's length
 * @param across where its chord's middle lies across the piece, 0 left to 1 right
 * @param up where it lies from bottom, 0, to top, 1
 */
record EdgeShape(double chordRad, double bulge, double share, double across, double up) {

    private static final double FLAT_MM = 0.5;

    /**
     * Looks at an edge.
     *
     * @param edge the edge, its piece to the left
     * @param aroundMm the whole outline's length, mm
     * @param piece the piece's bounds
     * @return its shape
     */
    static EdgeShape of(Path edge, double aroundMm, Bounds piece) {
        Point from = edge.start();
        Point to = edge.end();
        double chord = Math.max(1e-6, from.distanceTo(to));
        double area = 0;
        Point last = from;
        for (Point p : edge.flattened(FLAT_MM)) {
            area += last.minus(from).cross(p.minus(from)) / 2;
            last = p;
        }
        return new EdgeShape(
                Math.atan2(to.y() - from.y(), to.x() - from.x()),
                area / (chord * chord),
                edge.length() / aroundMm,
                ((from.x() + to.x()) / 2 - piece.minX()) / Math.max(1e-6, piece.width()),
                ((from.y() + to.y()) / 2 - piece.minY()) / Math.max(1e-6, piece.height()));
    }
}
