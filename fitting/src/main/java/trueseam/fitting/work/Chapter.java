package trueseam.fitting.work;

import java.util.List;
import trueseam.fitting.tissue.Step;
import trueseam.garment.pattern.Piece;

/**
 * One piece of one alteration: what the step sheet shows as a row.
 *
 * @param title the alteration
 * @param before the piece as it lay on the tissue
 * @param after the piece as it was drawn
 * @param steps what was done
 * @param truing whether this is truing after the alterations
 */
public record Chapter(String title, Piece before, Piece after, List<Step> steps, boolean truing) {

    // Immutable.
    public Chapter {
        steps = List.copyOf(steps);
    }

    /**
     * Whether the piece was cut and opened or lapped.
     *
     * @return true if a part was spread
     */
    public boolean isOpening() {
        return steps.stream().anyMatch(step -> step instanceof Step.Spread);
    }
}
