package trueseam.fitting.tissue;

import java.util.Locale;
import trueseam.geometry.OutOfReachException;

/** A pivot was asked to carry a place farther than the pattern reaches about the pin. Nothing is clamped. */
public class BeyondReachException extends TissueException {

    private static final long serialVersionUID = 1L;

    private final double wantedMm;
    private final double reachMm;

    /**
     * Holds the whole case.
     *
     * @param piece the piece
     * @param pin the pinned spot or hinge
     * @param spot the spot that was to move
     * @param cause what geometry said
     */
    public BeyondReachException(String piece, Spot pin, Spot spot, OutOfReachException cause) {
        super(
                piece,
                spot.word(),
                String.format(
                        Locale.ROOT,
                        "%.1f mm wanted, %.1f mm reachable from the %s; share it over more edges or take another size.",
                        cause.wantedMm(),
                        cause.reachMm(),
                        pin.word()));
        this.wantedMm = cause.wantedMm();
        this.reachMm = cause.reachMm();
    }

    /**
     * What was asked.
     *
     * @return mm
     */
    public double wantedMm() {
        return wantedMm;
    }

    /**
     * What is possible.
     *
     * @return the largest movement that way, mm
     */
    public double reachMm() {
        return reachMm;
    }
}
