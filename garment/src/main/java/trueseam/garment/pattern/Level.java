package trueseam.garment.pattern;

import trueseam.geometry.Point;

/**
 * A line across the grain of a piece.
 *
 * @param name which line
 * @param y its height in the piece, mm
 */
public record Level(LevelName name, double y) {

    // Refuses what is no height; -0.0 and 0.0 are one height.
    public Level {
        if (!(Math.abs(y) <= Point.LIMIT_MM)) {
            throw new IllegalArgumentException("Level \"" + name.word() + "\": a height of " + y
                    + " mm is not on the paper; give a number of at most 1,000,000 mm.");
        }
        y = y + 0.0;
    }
}
