package trueseam.geometry;

/**
 * A place on a path.
 *
 * @param alongMm length from the start of the path, mm
 * @param point where that is
 */
public record PathPlace(double alongMm, Point point) {}
