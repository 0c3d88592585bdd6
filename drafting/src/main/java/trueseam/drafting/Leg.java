package trueseam.drafting;

import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * One half leg of trousers as laid out in one round: the height of the crotch level is 0, the centre passes x = 0 at the
 * hip level, the side seam lies to the right.
 *
 * <pre>{@code
 *      C___/\___W        C waist at the centre, on a line that slants through (0, hip level)
 *       |        \       G where the crotch curve leaves that line
 *       |   hip   |H     P crotch point: crotch curve and inseam meet square, so that front
 *       G         |        and back flow into each other
 *    P_/          |      K knee, widths about the crease line
 *     \           |
 *      K         K'
 *      |    |    |
 * }</pre>
 *
 * @param inseam from crotch point to hem
 * @param side from hem to hip and on to the waist
 * @param hem from inseam to side
 * @param crotch from the waist to the crotch point
 * @param sideCurve the part of the side from hip to waist
 * @param creaseX where the crease line is
 */
record Leg(Path inseam, Path side, Path hem, Path crotch, Cubic sideCurve, double creaseX) {

    private static final Vec UP = new Vec(0, 1);

    /** The side turns back towards upright at the waist, so that the waist need not rise much there. */
    private static final double CURVE_SHARE = -0.4;

    /** Handles of the crotch curve as a share of its depth and width: fuller than an ellipse's 0.55 (common practice). */
    private static final double FULLNESS = 0.68;

    /**
     * What one round lays out.
     *
     * @param hipX side seam at the hip level
     * @param hipY hip level
     * @param waistIn how much farther in the side seam is at the waist
     * @param waistY side seam at the waist
     * @param kneeX side seam at the knee
     * @param kneeY knee level
     * @param kneeWidth width at the knee
     * @param hemWidth width at the hem
     * @param hemY height of the hem at its ends
     * @param extension how far the crotch point lies beyond the centre
     * @param pointY height of the crotch point
     * @param slant how far the centre goes in for each mm that it goes up
     * @param centreY waist at the centre
     */
    record Layout(
            double hipX,
            double hipY,
            double waistIn,
            double waistY,
            double kneeX,
            double kneeY,
            double kneeWidth,
            double hemWidth,
            double hemY,
            double extension,
            double pointY,
            double slant,
            double centreY) {

        Leg drawn() {
            double creaseX = kneeX - kneeWidth / 2;
            Point outerKnee = new Point(kneeX, kneeY);
            Point innerKnee = new Point(kneeX - kneeWidth, kneeY);
            Point outerHem = new Point(creaseX + hemWidth / 2, hemY);
            Point innerHem = new Point(creaseX - hemWidth / 2, hemY);
            Point hip = new Point(hipX, hipY);
            Point waist = new Point(hipX - waistIn, waistY);

            Line outerShin = new Line(outerHem, outerKnee);
            Cubic thigh = Joining.smooth(outerKnee, outerShin.tangent(1), hip, UP);
            Vec chord = waist.minus(hip);
            Cubic curve = Joining.smooth(hip, UP, waist, chord.turned(CURVE_SHARE * UP.angleTo(chord)));

            Point point = new Point(-extension, pointY);
            Line innerShin = new Line(innerKnee, innerHem);
            Cubic inner = Joining.tangentToEnd(point, innerKnee, innerShin.tangent(0));
            Path hem = Path.of(Joining.smooth(
                    innerHem,
                    innerShin.tangent(1).left(),
                    outerHem,
                    outerShin.tangent(0).right()));

            Vec down = new Vec(-slant, -1);
            double bendY = Math.min(hipY, Math.max(LEAST_BEND_MM, BEND_SHARE * extension));
            Point bend = new Point(slant * (bendY - hipY), bendY);
            Point centre = new Point(slant * (centreY - hipY), centreY);
            Vec into = inner.tangent(0).right();
            Cubic fork = Cubic.of(
                    bend,
                    down.unit().times(FULLNESS * (bendY - pointY)),
                    into.times(-FULLNESS * (bend.x() + extension)),
                    point);
            return new Leg(
                    Path.of(inner, innerShin),
                    Path.of(outerShin, thigh, curve),
                    hem,
                    Path.of(new Line(centre, bend), fork),
                    curve,
                    creaseX);
        }
    }

    private static final double LEAST_BEND_MM = 25;
    private static final double BEND_SHARE = 0.95;

    /** From the crotch curve to the side seam at the crotch level, mm. */
    double widthAtCrotch() {
        double sideX = side.atLevel(0).map(place -> place.point().x()).orElse(0.0);
        double forkX = crotch.atLevel(0)
                .map(place -> place.point().x())
                .orElse(crotch.end().x());
        return sideX - forkX;
    }

    /** Along the waist at the centre, square to the centre line. */
    Vec waistHeading() {
        return crotch.startTangent().left();
    }

    /** Along the waist where it arrives at the side, square to the side seam. */
    Vec waistArriving() {
        return side.endTangent().right();
    }
}
