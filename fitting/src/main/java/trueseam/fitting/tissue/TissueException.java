package trueseam.fitting.tissue;

/** Steps that cannot be carried out on a piece: the trade says no, and the sentence says where. */
public class TissueException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String piece;
    private final String where;

    /**
     * Says what cannot be done.
     *
     * @param piece the piece
     * @param where the edge, place or mark concerned
     * @param sentence what is wrong, what was expected, what to do
     */
    public TissueException(String piece, String where, String sentence) {
        super(piece + ", " + where + ": " + sentence);
        this.piece = piece;
        this.where = where;
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
     * The edge, place or mark.
     *
     * @return its name
     */
    public String where() {
        return where;
    }
}
