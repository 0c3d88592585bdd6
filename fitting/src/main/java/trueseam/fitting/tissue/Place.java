package trueseam.fitting.tissue;

import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;

/**
 * A place on the stitching line of a piece.
 *
 * @param edge the edge
 * @param alongMm how far along it, mm
 * @param word what a dressmaker calls it, for example {@code underarm point}
 */
public record Place(String edge, double alongMm, String word) {

    /**
     * The corner where an edge begins.
     *
     * @param edge the edge
     * @param word what the corner is called
     * @return the place
     */
    public static Place startOf(String edge, String word) {
        return new Place(edge, 0, word);
    }

    /**
     * The corner where an edge ends.
     *
     * @param piece the piece
     * @param edge the edge
     * @param word what the corner is called
     * @return the place
     */
    public static Place endOf(Piece piece, String edge, String word) {
        return new Place(edge, piece.edge(edge).length(), word);
    }

    /**
     * Where the place is on a piece.
     *
     * @param piece the piece as it lies at first
     * @return the point
     */
    public Point on(Piece piece) {
        return piece.edge(edge).path().pointAt(alongMm);
    }
}
