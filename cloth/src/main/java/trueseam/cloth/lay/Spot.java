package trueseam.cloth.lay;

import trueseam.cloth.packing.Way;

/**
 * Where one copy of a piece lies on the cloth, told by its name and its grainline: so it can be kept, and found again after the piece was
 * altered.
 *
 * @param piece the piece's name
 * @param way how it lies
 * @param alongMm how far the lower end of its grainline lies from the end of the cloth that is laid first, mm
 * @param acrossMm and across the cloth, from the fold or from the lower line that is free of the selvage; of a piece at the fold it says nothing
 * @param byHand whether it was put there by hand, and stays when the rest is laid
 */
public record Spot(String piece, Way way, double alongMm, double acrossMm, boolean byHand) {

    /** A place is a number. */
    public Spot {
        if (!(Double.isFinite(alongMm) && Double.isFinite(acrossMm) && Double.isFinite(way.turnDegrees()))) {
            throw new IllegalArgumentException("a piece lies at " + alongMm + ", " + acrossMm + " mm");
        }
    }

    Spot moved(double dxMm, double dyMm) {
        return new Spot(piece, way, alongMm + dxMm, acrossMm + dyMm, byHand);
    }

    /**
     * Held or let go.
     *
     * @param held whether it stays when the rest is laid
     * @return in the same place
     */
    public Spot held(boolean held) {
        return new Spot(piece, way, alongMm, acrossMm, held);
    }
}
