package trueseam.fitting.alteration;

import java.util.List;
import trueseam.fitting.tissue.Step;

/**
 * The steps of an alteration on one piece.
 *
 * @param piece name of the piece
 * @param steps a finished list
 */
public record PieceWork(String piece, List<Step> steps) {

    // Immutable.
    public PieceWork {
        steps = List.copyOf(steps);
    }
}
