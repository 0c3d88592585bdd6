package trueseam.drafting;

import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/** Armholes, from the underarm, square to the side seam, upright across front or back, to the shoulder. */
final class Armhole {

    private static final Vec UP = new Vec(0, 1);

    /** Where the armhole is narrowest: about half way up (common practice). */
    private static final double ACROSS_SHARE = 0.5;

    /** Handles as a share of width and height: a quarter of an ellipse has 0.55; a little more is rounder below. */
    private static final double ROUND = 0.6;

    private Armhole() {}

    /** The height at which the widths across front and back are held, mm. */
    static double acrossLevel(Point underarm, Point shoulder) {
        return underarm.y() + ACROSS_SHARE * (shoulder.y() - underarm.y());
    }

    /**
     * The armhole of one piece.
     *
     * @param side the side seam, arriving at the underarm
     * @param acrossMm centre to armhole at its narrowest
     * @param shoulder the shoulder
     * @param cornerRad angle of armhole and shoulder inside the piece; front and back make a straight angle
     */
    static Path of(Segment side, double acrossMm, ShoulderLine shoulder, double cornerRad) {
        Point underarm = side.end();
        Point top = shoulder.shoulderPoint();
        Point across = new Point(acrossMm, acrossLevel(underarm, top));
        Vec under = side.tangent(1).left().times(ROUND * (underarm.x() - across.x()));
        Vec upright = UP.times(-ROUND * (across.y() - underarm.y()));
        return Path.of(
                Cubic.of(underarm, under, upright, across),
                Joining.smooth(across, UP, top, shoulder.inwards().turned(cornerRad - Math.PI)));
    }
}
