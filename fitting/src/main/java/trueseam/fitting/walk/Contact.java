package trueseam.fitting.walk;

import trueseam.geometry.Point;

/**
 * One position of the walk.
 *
 * @param atMm how far both edges are walked, mm
 * @param sheet the rolling piece where it lies
 * @param point where the two edges touch
 */
public record Contact(double atMm, Sheet sheet, Point point) {}
