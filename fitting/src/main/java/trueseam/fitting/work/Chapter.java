package trueseam.fitting.work;

import java.util.List;
import trueseam.fitting.tissue.Step;
import trueseam.garment.pattern.Piece;

/**
 * One piece of one alteration: what the step sheet shows as a row.
 *
 * @param title the alteration
 * @param before the piece as it lay on the tissue
 * @param steps what was done
 * @param truing whether this is truing after the alterations
 */
public record Chapter(String title, Piece before, List<Step> steps, boolean truing) {

    // Immutable.
    public Chapter {
        steps = List.copyOf(steps);
    }
}
