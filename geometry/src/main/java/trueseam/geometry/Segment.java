package trueseam.geometry;

import java.util.List;

/**
 * One stroke of a path, from its start (t = 0) to its end (t = 1): a straight line or a cubic curve. Other curves are
 * turned into these on the way in (see {@code trueseam.geometry.convert}).
 *
 * <p>Laws: (1) {@code at(0) = start, at(1) = end}; (2) the pieces of a split meet and their lengths add up to the whole;
 * (3) moving changes no length; (4) reversing changes no length and turns the sign of {@link #areaTerm}.
 */
public sealed interface Segment permits Line, Cubic {

    /**
     * Where it begins.
     *
     * @return the point at t = 0
     */
    Point start();

    /**
     * Where it ends.
     *
     * @return the point at t = 1
     */
    Point end();

    /**
     * The point at a parameter.
     *
     * @param t from 0 to 1
     * @return the point
     */
    Point at(double t);

    /**
     * How the point moves with the parameter.
     *
     * @param t from 0 to 1
     * @return first derivative, mm for each unit of t; zero only where handles coincide
     */
    Vec derivative(double t);

    /**
     * How the first derivative changes.
     *
     * @param t from 0 to 1
     * @return second derivative
     */
    Vec secondDerivative(double t);

    /**
     * The direction of travel, also where handles coincide with their end.
     *
     * @param t from 0 to 1
     * @return unit vector
     */
    Vec tangent(double t);

    /**
     * The length along the stroke.
     *
     * @return mm, within 1e-10 of its size
     */
    double length();

    /**
     * The length from the start to a parameter.
     *
     * @param t from 0 to 1
     * @return mm
     */
    double lengthTo(double t);

    /**
     * The parameter at a length from the start; the inverse of {@link #lengthTo}.
     *
     * @param alongMm from 0 to {@link #length()}
     * @return t, such that {@code lengthTo(t)} is within 1e-10 mm of {@code alongMm}
     */
    double parameterAt(double alongMm);

    /**
     * A part of the stroke.
     *
     * @param t0 start, 0 inclusive
     * @param t1 end, 1 inclusive; not before t0
     * @return the same points as this from t0 to t1
     */
    Segment between(double t0, double t1);

    /**
     * The same stroke walked from its end.
     *
     * @return the reversed stroke
     */
    Segment reversed();

    /**
     * The stroke after a motion of the paper.
     *
     * @param m the motion
     * @return a congruent stroke
     */
    Segment moved(Motion m);

    /**
     * The tight upright rectangle around the stroke.
     *
     * @return bounds, mm
     */
    Bounds bounds();

    /**
     * The stroke's share of a closed outline's area: half the integral of x dy - y dx, exact.
     *
     * @return mm², positive for an outline walked anticlockwise
     */
    double areaTerm();

    /**
     * The parameters where the stroke crosses or touches a straight line without ends.
     *
     * @param through a point of the line
     * @param direction its direction, of any length but zero
     * @return the parameters from 0 to 1, in order; empty too when the stroke lies within the line
     */
    List<Double> crossings(Point through, Vec direction);

    /**
     * The curvature, signed.
     *
     * @param t from 0 to 1
     * @return 1/mm, positive where the stroke bends to the left; 0 where the derivative vanishes
     */
    default double curvature(double t) {
        Vec d = derivative(t);
        double speed = d.length();
        return speed > 0 ? d.cross(secondDerivative(t)) / (speed * speed * speed) : 0;
    }
}
