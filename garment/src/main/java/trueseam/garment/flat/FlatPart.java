package trueseam.garment.flat;

/**
 * One reading of the tape on one piece.
 *
 * @param piece name of the piece
 * @param what where the tape lay, in a few words
 * @param mm what it read, darts left out, mm
 * @param times how often it counts: 2 for a half piece in a girth
 */
public record FlatPart(String piece, String what, double mm, int times) {

    /**
     * Its share of the measure.
     *
     * @return mm times the count
     */
    public double totalMm() {
        return mm * times;
    }
}
