package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * Where an outline turns: the ends of its edges. The turn is looked at over a little length, so that a curve drawn as many short lines
 * has no corners, and a corner rounded by a pen has one.
 */
final class Corners {

    /** Half the length over which a turn is looked at: shorter than the shortest edge, longer than a step of a drawn curve. */
    private static final double REACH_MM = 6;

    /** A neck of 60 mm radius turns 11 degrees over that length; edges meet at 25 degrees and more. */
    private static final double LEAST_TURN_RAD = Math.toRadians(22);

    private static final double STEP_MM = 1;

    /** Two marked corners nearer than this are one: no edge is so short. */
    private static final double ONE_CORNER_MM = 3;

    /** A piece has three edges at least. */
    private static final int LEAST_MARKED = 3;

    private Corners() {}

    /**
     * Finds the corners, or takes those that are marked, if they are enough to be all.
     *
     * @param outline the outline
     * @param darts its darts; corners inside their mouths are the dart's, not its own
     * @return places along the outline, mm, in order
     */
    static List<Double> of(Outline outline, List<InnerDart> darts) {
        Path line = outline.line();
        double around = line.length();
        List<Double> marked = marked(outline, darts);
        if (marked.size() >= LEAST_MARKED) {
            return marked;
        }
        int n = (int) Math.max(16, Math.round(around / STEP_MM));
        double step = around / n;
        int reach = Math.max(1, (int) Math.round(REACH_MM / step));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            points.add(line.pointAt(i * step));
        }
        double[] turn = new double[n];
        for (int i = 0; i < n; i++) {
            Point before = points.get((i - reach + n) % n);
            Point at = points.get(i);
            Point after = points.get((i + reach) % n);
            turn[i] = Math.abs(at.minus(before).angleTo(after.minus(at)));
        }
        List<Double> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (turn[i] >= LEAST_TURN_RAD && isPeak(turn, i, reach)) {
                double at = exact(line, i * step, step);
                if (darts.stream().noneMatch(dart -> inMouth(at, dart, around))) {
                    corners.add(at);
                }
            }
        }
        Collections.sort(corners);
        return corners;
    }

    private static List<Double> marked(Outline outline, List<InnerDart> darts) {
        Path line = outline.line();
        double around = line.length();
        TreeSet<Double> corners = new TreeSet<>();
        for (Point corner : outline.marked()) {
            double at = exact(line, line.nearest(corner).alongMm(), STEP_MM);
            boolean apart =
                    corners.stream().noneMatch(c -> Math.abs(Math.IEEEremainder(c - at, around)) < ONE_CORNER_MM);
            if (apart && darts.stream().noneMatch(dart -> inMouth(at, dart, around))) {
                corners.add(at);
            }
        }
        return List.copyOf(corners);
    }

    private static boolean isPeak(double[] turn, int i, int reach) {
        int n = turn.length;
        for (int k = 1; k <= reach; k++) {
            double before = turn[(i - k + n) % n];
            double after = turn[(i + k) % n];
            if (before > turn[i] || after >= turn[i]) {
                return false;
            }
        }
        return true;
    }

    /** Where segments meet nearby, the corner is there to the last bit. */
    private static double exact(Path line, double at, double step) {
        double best = at;
        double nearest = 1.5 * step;
        double along = 0;
        for (int i = 0; i <= line.segments().size(); i++) {
            double apart = Math.abs(along - at);
            if (apart < nearest) {
                nearest = apart;
                best = along;
            }
            if (i < line.segments().size()) {
                along += line.segments().get(i).length();
            }
        }
        return best >= line.length() - 1e-9 ? 0 : best;
    }

    private static boolean inMouth(double at, InnerDart dart, double around) {
        double mouth = ((dart.toMm() - dart.fromMm()) % around + around) % around;
        double into = ((at - dart.fromMm() + 2) % around + around) % around;
        return into <= mouth + 4;
    }
}
