package trueseam.output.dxf;

/** A piece whose outline crosses itself: where it is to be cut cannot be told. */
public final class CrossingOutlineException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String piece;

    /**
     * Says which piece.
     *
     * @param piece its name
     */
    public CrossingOutlineException(String piece) {
        super(
                piece
                        + ": the outline crosses itself, so it has no cutting line and cannot be written as DXF; mend the piece first.");
        this.piece = piece;
    }

    /**
     * Which piece.
     *
     * @return its name
     */
    public String piece() {
        return piece;
    }
}
