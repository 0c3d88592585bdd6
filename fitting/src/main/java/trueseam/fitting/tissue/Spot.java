package trueseam.fitting.tissue;

import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;

/**
 * A spot of the pattern, inside or on its stitching line, where the pattern lay at first.
 *
 * @param at where it is
 * @param word what a dressmaker calls it, for example {@code bust point}
 */
public record Spot(Point at, String word) {

    /**
     * The spot of a place on the stitching line.
     *
     * @param piece the piece
     * @param place the place
     * @return the spot
     */
    public static Spot of(Piece piece, Place place) {
        return new Spot(place.on(piece), place.word());
    }
}
