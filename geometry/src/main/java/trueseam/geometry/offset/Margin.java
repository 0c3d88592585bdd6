package trueseam.geometry.offset;

import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;

/**
 * One edge of a piece with the allowance beside it.
 *
 * @param line the edge, a part of the outline
 * @param distanceMm how far outwards the new line lies, mm; 0 for an edge on a fold, negative for inwards
 */
public record Margin(Path line, double distanceMm) {

    // Refuses what is no distance.
    // Throws GeometryException if the distance is not a number or beyond a metre
    public Margin {
        if (!(Math.abs(distanceMm) <= Offset.LARGEST_MM)) {
            throw new GeometryException("A line cannot be drawn " + distanceMm + " mm beside another; give at most "
                    + Offset.LARGEST_MM + " mm either way.");
        }
    }
}
