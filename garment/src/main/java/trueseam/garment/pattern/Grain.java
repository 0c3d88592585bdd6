package trueseam.garment.pattern;

import trueseam.geometry.Motion;
import trueseam.geometry.Point;

/**
 * The grainline: it is laid parallel to the selvage.
 *
 * @param from lower end
 * @param to upper end
 */
public record Grain(Point from, Point to) {

    // A grain of no length has no direction.
    public Grain {
        if (from.isNear(to, 1)) {
            throw new IllegalArgumentException("A grainline from " + from + " to " + to + " is too short to lay.");
        }
    }

    /**
     * The grainline after a motion of the paper.
     *
     * @param m the motion
     * @return the moved line
     */
    public Grain moved(Motion m) {
        return new Grain(m.apply(from), m.apply(to));
    }
}
