package trueseam.garment.pattern;

import trueseam.geometry.Path;

/**
 * A line drawn inside a piece that is neither edge, dart, level nor grain: a pocket place, a fold.
 *
 * @param name what it is
 * @param path where it is
 */
public record Marking(String name, Path path) {}
