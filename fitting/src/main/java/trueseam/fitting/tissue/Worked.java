package trueseam.fitting.tissue;

import java.util.List;
import trueseam.garment.pattern.Piece;

/**
 * What steps made of a piece.
 *
 * @param piece the piece now
 * @param runs its whole outline in order, each part kept, carried or drawn new
 */
public record Worked(Piece piece, List<Run> runs) {

    // Immutable.
    public Worked {
        runs = List.copyOf(runs);
    }
}
