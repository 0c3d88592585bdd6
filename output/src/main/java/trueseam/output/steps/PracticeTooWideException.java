package trueseam.output.steps;

import java.util.Locale;

/** A piece is wider than the paper even in quarter scale. */
public final class PracticeTooWideException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * It cannot be practised on this paper.
     *
     * @param piece the piece
     * @param wideMm how wide it is in quarter scale, mm
     * @param roomMm how much room the paper has, mm
     */
    public PracticeTooWideException(String piece, double wideMm, double roomMm) {
        super(String.format(
                Locale.ROOT,
                "The piece %s is %.0f mm wide in quarter scale, and the paper has %.0f mm of room; practise on another garment.",
                piece,
                wideMm,
                roomMm));
    }
}
