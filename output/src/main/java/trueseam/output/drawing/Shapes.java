package trueseam.output.drawing;

import trueseam.geometry.Bounds;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Simple closed paths. */
public final class Shapes {

    /** Length of the handles of a quarter circle, as a share of its radius: off by at most 0.03 % of the radius. */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private Shapes() {}

    /**
     * A rectangle.
     *
     * @param area its bounds
     * @return closed, anticlockwise from the lower left
     */
    public static Path rectangle(Bounds area) {
        return closed(
                new Point(area.minX(), area.minY()),
                new Point(area.maxX(), area.minY()),
                new Point(area.maxX(), area.maxY()),
                new Point(area.minX(), area.maxY()));
    }

    /**
     * A straight-sided shape.
     *
     * @param corners at least two
     * @return closed, in the order of the corners
     */
    public static Path closed(Point... corners) {
        Point[] round = new Point[corners.length + 1];
        System.arraycopy(corners, 0, round, 0, corners.length);
        round[corners.length] = corners[0];
        return Path.through(round);
    }

    /**
     * A circle, of four cubic curves.
     *
     * @param centre its middle
     * @param radiusMm its radius, mm
     * @return closed, anticlockwise
     */
    public static Path circle(Point centre, double radiusMm) {
        Vec right = new Vec(radiusMm, 0);
        Cubic[] quarters = new Cubic[4];
        for (int i = 0; i < 4; i++) {
            Vec from = turned(right, i);
            Vec to = turned(right, i + 1);
            quarters[i] = new Cubic(
                    centre.plus(from),
                    centre.plus(from).plus(to.times(QUARTER)),
                    centre.plus(to).plus(from.times(QUARTER)),
                    centre.plus(to));
        }
        return Path.of(quarters);
    }

    /** Turned by quarters, without rounding. */
    private static Vec turned(Vec v, int quarters) {
        Vec t = v;
        for (int i = 0; i < quarters % 4; i++) {
            t = new Vec(-t.y(), t.x());
        }
        return t;
    }
}
