package trueseam.fitting.alteration;

/** An alteration that a piece cannot take: the sentence says where, how much, and what to do instead. */
public class AlterationException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String piece;
    private final String where;
    private final double amountMm;

    /**
     * Says why not.
     *
     * @param piece the piece
     * @param where edge, level or place
     * @param amountMm what was asked, mm
     * @param sentence why it cannot be, and what to do
     */
    public AlterationException(String piece, String where, double amountMm, String sentence) {
        super(piece + ", " + where + ": " + sentence);
        this.piece = piece;
        this.where = where;
        this.amountMm = amountMm;
    }

    /**
     * The piece.
     *
     * @return its name
     */
    public String piece() {
        return piece;
    }

    /**
     * Where on the piece.
     *
     * @return edge, level or place
     */
    public String where() {
        return where;
    }

    /**
     * What was asked.
     *
     * @return mm
     */
    public double amountMm() {
        return amountMm;
    }
}
