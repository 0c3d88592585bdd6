package trueseam.garment.pattern;

/**
 * An edge of a piece, by their names.
 *
 * @param piece name of the piece
 * @param edge name of the edge
 */
public record EdgeRef(String piece, String edge) {

    @Override
    public String toString() {
        return piece + ", " + edge;
    }
}
