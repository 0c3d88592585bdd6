package trueseam.intake.apparel;

import trueseam.geometry.Path;

/**
 * A line of a piece whose meaning its layer does not tell.
 *
 * @param layer name of its layer, as written
 * @param path where it runs, mm
 */
public record OtherLine(String layer, Path path) {}
