package trueseam.cloth.lay;

import trueseam.geometry.Point;

/**
 * What a piece is matched by on striped cloth.
 *
 * @param at the place of its stitching line that matches, in its own coordinates
 * @param alongMm how far along the grain that place lies from a crosswise stripe as the piece lies upright, mm
 */
public record StripeMatch(Point at, double alongMm) {}
