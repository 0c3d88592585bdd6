package trueseam.fitting.walk;

import java.util.OptionalDouble;
import trueseam.garment.pattern.Notch;
import trueseam.geometry.Point;

/**
 * Where a notch of one edge lands on the other.
 *
 * @param onRolling whether the notch is on the piece that rolls
 * @param piece the piece it is on
 * @param kind how many cuts it has
 * @param atMm how far it is from where walking begins, mm
 * @param point where it lands on the standing edge
 * @param offMm how much farther along its partner on the other edge is, mm; nothing if it has none: partners are of one kind, and neither has a
 *     nearer one
 */
public record Landing(
        boolean onRolling, String piece, Notch.Kind kind, double atMm, Point point, OptionalDouble offMm) {}
