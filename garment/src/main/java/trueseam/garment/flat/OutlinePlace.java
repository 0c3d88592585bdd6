package trueseam.garment.flat;

import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;

/**
 * A place on the stitching line of a piece, for a tape to be laid from.
 *
 * @param edge the edge
 * @param alongMm how far along it, mm
 * @param point where that is
 */
public record OutlinePlace(String edge, double alongMm, Point point) {

    /**
     * The place of the stitching line that is nearest to a point.
     *
     * @param piece the piece
     * @param p the point
     * @return the place; of two equally near, the first in the order of the outline
     */
    public static OutlinePlace nearest(Piece piece, Point p) {
        Optional<OutlinePlace> best = Optional.empty();
        for (Edge edge : piece.edges()) {
            PathPlace place = edge.path().nearest(p);
            if (best.isEmpty()
                    || place.point().distanceTo(p) < best.get().point().distanceTo(p)) {
                best = Optional.of(new OutlinePlace(edge.name(), place.alongMm(), place.point()));
            }
        }
        return best.orElseThrow();
    }
}
