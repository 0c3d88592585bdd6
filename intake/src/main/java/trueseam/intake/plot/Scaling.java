package trueseam.intake.plot;

import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * What the numbers of a plot are worth.
 *
 * @param origin where (0, 0) lies, mm
 * @param mm length of one unit, mm
 */
record Scaling(Point origin, double mm) {

    /** 40 plotter units are 1 mm. Source: HP-GL, plotter units of 0.025 mm. */
    static final double UNIT_MM = 0.025;

    static final Scaling PLAIN = new Scaling(Point.ORIGIN, UNIT_MM);

    Point point(double x, double y) {
        return new Point(origin.x() + x * mm, origin.y() + y * mm);
    }

    Vec by(double x, double y) {
        return new Vec(x * mm, y * mm);
    }
}
