package trueseam.geometry.join;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A smooth curve through known points that never swings beyond them: between two of them it only rises or only falls, as a
 * careful hand would draw it, and it ends with the first and the last.
 *
 * <p>Laws: (1) it meets every point; (2) between neighbours y stays between theirs; (3) its slope does not jump; (4) x runs evenly
 * along each stroke, so that y at an x is exact. Slopes after F. N. Fritsch and J. Butland, A method for constructing local monotone
 * piecewise cubic interpolants, SIAM Journal on Scientific and Statistical Computing 5, 1984 (from memory, with the three-point
 * ends of C. Moler, Numerical Computing with MATLAB, 2004, chapter 3; held against a general reference library in the test).
 */
public final class MonotoneCurve {

    private final List<Point> points;
    private final double[] slopes;

    private MonotoneCurve(List<Point> points) {
        this.points = List.copyOf(points);
        this.slopes = slopes(this.points);
    }

    /**
     * Draws through points.
     *
     * @param points at least two, each further to the right than the one before
     * @return the curve
     * @throws IllegalArgumentException when there are fewer, or one does not lie to the right of the one before
     */
    public static MonotoneCurve through(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("A curve needs two points at least, not " + points.size() + ".");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).x() > points.get(i - 1).x())) {
                throw new IllegalArgumentException(
                        points.get(i) + " does not lie to the right of " + points.get(i - 1) + ".");
            }
        }
        return new MonotoneCurve(points);
    }

    /**
     * How high it is at a place.
     *
     * @param x the place
     * @return y, or nothing before the first point and beyond the last
     */
    public OptionalDouble at(double x) {
        for (int i = 1; i < points.size(); i++) {
            Point from = points.get(i - 1);
            Point to = points.get(i);
            if (from.x() <= x && x <= to.x()) {
                double share = (x - from.x()) / (to.x() - from.x());
                return OptionalDouble.of(stroke(i - 1).at(share).y());
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * The curve as a path.
     *
     * @return a cubic from each point to the next
     */
    public Path path() {
        List<Cubic> strokes = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            strokes.add(stroke(i));
        }
        return Path.of(strokes);
    }

    private Cubic stroke(int i) {
        Point from = points.get(i);
        Point to = points.get(i + 1);
        double third = (to.x() - from.x()) / 3;
        return new Cubic(
                from,
                new Point(from.x() + third, from.y() + third * slopes[i]),
                new Point(to.x() - third, to.y() - third * slopes[i + 1]),
                to);
    }

    private static double[] slopes(List<Point> points) {
        int last = points.size() - 1;
        double[] step = new double[last];
        double[] chord = new double[last];
        for (int i = 0; i < last; i++) {
            step[i] = points.get(i + 1).x() - points.get(i).x();
            chord[i] = (points.get(i + 1).y() - points.get(i).y()) / step[i];
        }
        if (last == 1) {
            return new double[] {chord[0], chord[0]};
        }
        double[] slopes = new double[last + 1];
        for (int i = 1; i < last; i++) {
            slopes[i] = inner(step[i - 1], chord[i - 1], step[i], chord[i]);
        }
        slopes[0] = end(step[0], chord[0], step[1], chord[1]);
        slopes[last] = end(step[last - 1], chord[last - 1], step[last - 2], chord[last - 2]);
        return slopes;
    }

    /** A weighted harmonic mean; level where the chords on either side do not run the same way. */
    private static double inner(double stepBefore, double before, double stepAfter, double after) {
        if (before * after <= 0) {
            return 0;
        }
        double weightBefore = 2 * stepAfter + stepBefore;
        double weightAfter = stepAfter + 2 * stepBefore;
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    /** The parabola through the first three points, held back where it would swing over. */
    private static double end(double step, double chord, double nextStep, double nextChord) {
        double slope = ((2 * step + nextStep) * chord - step * nextChord) / (step + nextStep);
        if (slope * chord <= 0) {
            return 0;
        }
        boolean turns = chord * nextChord <= 0;
        return turns && Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope;
    }
}
