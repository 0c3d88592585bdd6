package trueseam.output.print;

import trueseam.geometry.Bounds;
import trueseam.geometry.Point;

/**
 * A piece where it lies on the large sheet.
 *
 * @param piece its name
 * @param origin where the origin of its coordinates lies on the sheet
 * @param area all that is drawn of it, on the sheet
 */
public record Placed(String piece, Point origin, Bounds area) {}
