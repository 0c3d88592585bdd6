package trueseam.garment.pattern;

/** A pattern that cannot be: an outline with a gap, a dart on an edge that is not there. The message is one sentence. */
public class PatternException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String piece;

    /**
     * Says what is wrong with which piece.
     *
     * @param piece the piece's name
     * @param sentence what, where on the piece, what was expected
     */
    public PatternException(String piece, String sentence) {
        super("Piece \"" + piece + "\": " + sentence);
        this.piece = piece;
    }

    /**
     * The piece concerned.
     *
     * @return its name
     */
    public String piece() {
        return piece;
    }
}
