package trueseam.fitting.plan;

import trueseam.fitting.alteration.AlterationException;

/** An amount that the pieces cannot take, with how much of it they can. */
public class BeyondTakenException extends AlterationException {

    private static final long serialVersionUID = 1L;

    private final double takenMm;

    /**
     * Says why not, and how much.
     *
     * @param piece the piece, or the pattern where it is about several
     * @param where edge, level, place or alteration
     * @param amountMm what was asked, mm
     * @param takenMm how much of it can be taken, mm; 0 for nothing
     * @param sentence why it cannot be, what to do and how much can
     */
    public BeyondTakenException(String piece, String where, double amountMm, double takenMm, String sentence) {
        super(piece, where, amountMm, sentence);
        this.takenMm = takenMm;
    }

    /**
     * How much of the amount can be taken.
     *
     * @return mm, with the sign of the amount; 0 for nothing
     */
    public double takenMm() {
        return takenMm;
    }
}
