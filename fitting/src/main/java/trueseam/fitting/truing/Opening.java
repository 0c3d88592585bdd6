package trueseam.fitting.truing;

import trueseam.garment.pattern.Piece;

/**
 * A piece before and after it was cut and opened or lapped. What the opening turned comes back when the dart that took it is sewn
 * closed, so that it does not count when the ends of seams are held against each other; that they meet is proved by walking.
 *
 * @param before the piece before
 * @param after the piece after
 */
public record Opening(Piece before, Piece after) {}
