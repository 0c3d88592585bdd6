package trueseam.geometry.convert;

import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Other curves as cubics. */
public final class Curves {

    private Curves() {}

    /**
     * A quadratic curve as the cubic that has the same points (degree elevation, exact).
     *
     * @param start where it begins
     * @param handle its one handle
     * @param end where it ends
     * @return the same curve
     */
    public static Cubic quadratic(Point start, Point handle, Point end) {
        return new Cubic(start, start.towards(handle, 2.0 / 3), end.towards(handle, 2.0 / 3), end);
    }

    /**
     * A part of a circle, to 1e-6 mm.
     *
     * @param centre its centre
     * @param radiusMm its radius, mm, above 0
     * @param fromRad angle at which it begins, anticlockwise from the x axis
     * @param turnRad how far round it goes, anticlockwise positive, at most a full turn
     * @return the arc, closed if the turn is full
     * @throws GeometryException if the radius is not above 0, or the turn is none or more than full
     */
    public static Path arc(Point centre, double radiusMm, double fromRad, double turnRad) {
        if (!(radiusMm > 0 && 0 < Math.abs(turnRad) && Math.abs(turnRad) <= 2 * Math.PI)) {
            throw new GeometryException("No arc of radius " + radiusMm + " mm turns " + turnRad
                    + " radians; give a radius above 0 and a turn of at most 2 pi.");
        }
        Point start = centre.plus(Vec.atAngle(fromRad).times(radiusMm));
        boolean full = Math.abs(turnRad) == 2 * Math.PI;
        Point end = full ? start : centre.plus(Vec.atAngle(fromRad + turnRad).times(radiusMm));
        Vec across = new Vec(radiusMm, 0);
        return Path.of(new EllipseSweep(centre, across, across.left(), fromRad, turnRad).cubics(start, end));
    }

    /**
     * A whole circle, to 1e-6 mm, anticlockwise from its rightmost point.
     *
     * @param centre its centre
     * @param radiusMm its radius, mm, above 0
     * @return a closed path
     * @throws GeometryException if the radius is not above 0
     */
    public static Path circle(Point centre, double radiusMm) {
        return arc(centre, radiusMm, 0, 2 * Math.PI);
    }

    /**
     * An elliptical arc given by its ends, as SVG path data does, to 1e-6 mm. Source: SVG 1.1 (second edition), appendix
     * F.6.5 and F.6.6: radii are taken without sign and grown where the ends lie too far apart.
     *
     * @param start where it begins
     * @param radii the two radii, mm
     * @param turnRad how far the first radius is turned from the x axis towards the y axis
     * @param large whether the arc of more than half a turn is meant
     * @param sweep whether it goes round from the x axis towards the y axis
     * @param end where it ends
     * @return cubics from start to end; none if the two are one point
     * @throws GeometryException if a radius is 0: the arc is then a straight line
     */
    public static List<Cubic> ellipticalArc(
            Point start, Vec radii, double turnRad, boolean large, boolean sweep, Point end) {
        if (start.equals(end)) {
            return List.of();
        }
        double rx = Math.abs(radii.x());
        double ry = Math.abs(radii.y());
        if (!(rx > 0 && ry > 0)) {
            throw new GeometryException(
                    "An arc of radii " + rx + " and " + ry + " mm is a straight line, not a curve.");
        }
        Vec half = start.minus(end).times(0.5).turned(-turnRad); // (x1', y1') of F.6.5.1
        double px = half.x() / rx;
        double py = half.y() / ry;
        double short2 = px * px + py * py;
        double grow = short2 > 1 ? Math.sqrt(short2) : 1;
        rx *= grow;
        ry *= grow;
        px /= grow;
        py /= grow;
        // In the frame where the ellipse is a unit circle: the centre lies square to the half chord (F.6.5.2).
        double in2 = Math.min(1, px * px + py * py);
        double away = Math.sqrt((1 - in2) / in2) * (large == sweep ? -1 : 1);
        double cx = away * py;
        double cy = -away * px;
        double from = Math.atan2(py - cy, px - cx);
        double to = Math.atan2(-py - cy, -px - cx);
        double turn = to - from;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        Vec across = new Vec(rx, 0).turned(turnRad);
        Vec up = new Vec(0, ry).turned(turnRad);
        Point middle = start.towards(end, 0.5);
        Point centre = middle.plus(across.times(cx)).plus(up.times(cy));
        return new EllipseSweep(centre, across, up, from, turn).cubics(start, end);
    }
}
