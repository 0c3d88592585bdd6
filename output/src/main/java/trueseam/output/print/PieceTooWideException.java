package trueseam.output.print;

import java.util.Locale;

/** A piece that does not fit on the paper it was to be printed on in one part. */
public final class PieceTooWideException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String piece;
    private final double neededMm;

    /**
     * Says which piece and what paper it needs.
     *
     * @param piece name of the piece
     * @param neededMm width of paper that it needs, margins included, mm
     * @param widthMm width of the paper, mm
     */
    public PieceTooWideException(String piece, double neededMm, double widthMm) {
        super(String.format(
                Locale.ROOT,
                "%s needs paper at least %.0f mm wide, and the sheet is %.0f mm wide; take a wider roll, or sheets of A4.",
                piece,
                Math.ceil(neededMm),
                widthMm));
        this.piece = piece;
        this.neededMm = neededMm;
    }

    /**
     * Which piece.
     *
     * @return its name
     */
    public String piece() {
        return piece;
    }

    /**
     * What paper it needs.
     *
     * @return width, margins included, mm
     */
    public double neededMm() {
        return neededMm;
    }
}
