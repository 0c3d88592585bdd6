package trueseam.cloth.packing;

/**
 * Where a copy of a part lies.
 *
 * @param part the place of the part in the strip's list
 * @param way how it lies
 * @param x where its reference point (the origin of its outline) lies along the strip, mm
 * @param y and across it, mm
 */
public record Placed(int part, Way way, double x, double y) {}
