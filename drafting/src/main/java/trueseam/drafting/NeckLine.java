package trueseam.drafting;

import trueseam.garment.measure.Measure;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/** Neck lines, from the neck point to the centre, square to it. */
final class NeckLine {

    private static final Vec TO_CENTRE = new Vec(-1, 0);
    private static final double SHALLOWEST_MM = 15;

    private NeckLine() {}

    /**
     * The neck line of one piece.
     *
     * @param shoulder its shoulder
     * @param cornerRad angle of shoulder and neck inside the piece; front and back make a straight angle
     * @param centreY where it meets the centre line, mm
     */
    static Path to(ShoulderLine shoulder, double cornerRad, double centreY) {
        Vec down = shoulder.path().endTangent().turned(Math.PI - cornerRad);
        return Path.of(Joining.smooth(shoulder.neckPoint(), down, new Point(0, centreY), TO_CENTRE));
    }

    /**
     * The neck line as deep as makes it a given length.
     *
     * @param shoulder its shoulder
     * @param cornerRad angle of shoulder and neck inside the piece
     * @param mm wanted length
     * @param plan what is drafted
     */
    static Path ofLength(ShoulderLine shoulder, double cornerRad, double mm, UpperPlan plan) {
        double top = shoulder.neckPoint().y();
        double[] depth = {1.3 * shoulder.neckPoint().x()};
        Path[] line = new Path[1];
        Settling.of(
                share -> {
                    line[0] = to(shoulder, cornerRad, top - depth[0]);
                    double miss = mm - line[0].length();
                    depth[0] += share * miss;
                    if (depth[0] < SHALLOWEST_MM) {
                        throw new DraftException(
                                plan.shell(),
                                Measure.NECK_BASE_GIRTH,
                                2 * plan.neckHalf(),
                                2 * (plan.neckHalf() - miss),
                                "the front neck would not be below the neck point; measure the neck base again");
                    }
                    return Math.abs(miss);
                },
                plan.shell(),
                Measure.NECK_BASE_GIRTH);
        return line[0];
    }
}
