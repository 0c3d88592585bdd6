package trueseam.geometry.offset;

import java.util.List;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * What comes between two new lines at a corner of the source where the corner is on the outer side, so that the lines do
 * not reach each other.
 *
 * @param corner the corner of the source
 * @param end where the first new line ends
 * @param arriving its direction there
 * @param start where the second new line begins
 * @param leaving its direction there
 * @param widestMm the wider of the two distances, mm, at least 0
 */
record Corner(Point corner, Point end, Vec arriving, Point start, Vec leaving, double widestMm) {

    /** Below this the directions are as good as parallel: the mitre would be a million distances away. */
    private static final double PARALLEL = 1e-6;

    /** Rounding of a foot that should lie at an end. */
    private static final double ROUNDING_MM = 1e-9;

    /**
     * The points between: the mitre; two where it is cut off square; none where the lines are to be joined straight (a step
     * between two allowances along one line).
     */
    List<Point> between(double mitreLimit) {
        double cross = arriving.cross(leaving);
        double reach = mitreLimit * widestMm;
        if (Math.abs(cross) > PARALLEL) {
            double ahead = ahead(cross);
            double behind = behind(cross);
            Point mitre = end.plus(arriving.times(ahead));
            boolean extendsBoth = -ROUNDING_MM <= ahead && -ROUNDING_MM <= behind;
            if (extendsBoth && mitre.isNear(corner, reach)) {
                return List.of(mitre);
            }
        }
        return arriving.dot(leaving) < 0 ? cutOff(reach) : List.of();
    }

    /** How far the first line must go on to meet the second; negative if it passed it already. */
    double ahead(double cross) {
        return start.minus(end).cross(leaving) / cross;
    }

    /** How far before its beginning the second line meets the first; negative if beyond. */
    double behind(double cross) {
        return -start.minus(end).cross(arriving) / cross;
    }

    /**
     * A spike cut off square to its middle line at the reach allowed.
     *
     * <pre>{@code
     *   end ----e1          corner p: the source turns back on itself here;
     *   p  - - - |  reach   e1, e2: where the new lines are cut off.
     *   start---e2
     * }</pre>
     */
    private List<Point> cutOff(double reach) {
        Vec out = arriving.minus(leaving).unit();
        double first = (reach - end.minus(corner).dot(out)) / arriving.dot(out);
        double second = (reach - start.minus(corner).dot(out)) / -leaving.dot(out);
        return 0 <= first && 0 <= second
                ? List.of(end.plus(arriving.times(first)), start.minus(leaving.times(second)))
                : List.of();
    }
}
