package trueseam.fitting.handle;

import trueseam.garment.measure.Measure;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * A place of an altered piece by which a measure is dragged larger or smaller.
 *
 * @param id unique in its pattern, the same from one fit to the next
 * @param piece name of the piece
 * @param measure the measure that it changes
 * @param word where it is, for example {@code side at the hip level}
 * @param at where it is, on the stitching line or at a point inside
 * @param out the direction in which the measure grows, a unit vector
 * @param perMm by how many mm the measure grows for each mm that the handle goes: over so many cut edges it is shared
 */
public record Handle(String id, String piece, Measure measure, String word, Point at, Vec out, double perMm) {

    // A handle that changes nothing, or has no direction, cannot be dragged.
    public Handle {
        if (!(Math.abs(out.length() - 1) <= 1e-9)) {
            throw new IllegalArgumentException(
                    "Handle \"" + id + "\": its direction must be of length 1: " + out + ".");
        }
        if (!(0 < perMm && perMm <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "Handle \"" + id + "\": a measure must grow with the drag, not by " + perMm + " mm for each mm.");
        }
    }
}
