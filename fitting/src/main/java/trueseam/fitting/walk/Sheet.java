package trueseam.fitting.walk;

import trueseam.geometry.Motion;

/**
 * A piece on the table.
 *
 * @param piece its name
 * @param turnedOver whether it is first turned over, mirrored at the line x = 0, so that it lies on the other side of the seam as when
 *     the sewn seam is opened flat
 * @param pose where it then lies
 */
public record Sheet(String piece, boolean turnedOver, Motion pose) {}
