package trueseam.garment.pattern;

/**
 * A line across the grain of a piece.
 *
 * @param name which line
 * @param y its height in the piece, mm
 */
public record Level(LevelName name, double y) {}
