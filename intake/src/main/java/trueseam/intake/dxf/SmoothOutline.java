package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/**
 * An outline of straight chords drawn smooth between its corners. Every vertex stays where it is; a chord becomes a curve only if that
 * leaves it by no more than the tolerance, else it stays straight and its neighbours run on from it.
 * <pre>{@code
 *    corner ----straight---- o  .  o            directions at o: of the straight chord beside it,
 *                                    `  o       else of the circle through the three points
 *                                        o corner
 * }</pre>
 *
 * @param path the outline, from a corner if it has one
 * @param corners its corners, in order
 * @param curved how many chords became curves
 * @param kept how many chords between two curve points would have bulged more and stay straight
 * @param mostMm how far a curve leaves its chord at most, mm
 */
record SmoothOutline(Path path, List<Point> corners, int curved, int kept, double mostMm) {

    /** A curve so flat is a straight line. */
    private static final double FLAT_MM = 5e-4;

    /** Vertices so near are one. */
    private static final double ONE_MM = 1e-3;

    /** A curve through chords does not turn farther within one of them. */
    private static final double STEEPEST_RAD = Math.PI / 3;

    static SmoothOutline of(Path closed, Predicate<Bend> isCorner, double toleranceMm) {
        List<Segment> strokes = withoutSlivers(closed);
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            if (isCorner.test(Bend.before(strokes, i))) {
                at.add(i);
            }
        }
        List<Point> corners = at.stream().map(i -> strokes.get(i).start()).toList();
        int first = at.isEmpty() ? 0 : at.get(0);
        Set<Integer> begins = at.stream().map(i -> i - first).collect(Collectors.toSet());
        Collections.rotate(strokes, -first);
        List<Segment> all = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        int curved = 0;
        int kept = 0;
        double most = 0;
        for (int i = 0; i < strokes.size(); i++) {
            run.add(strokes.get(i));
            boolean ends = i + 1 == strokes.size() || begins.contains(i + 1);
            if (ends) {
                SmoothRun smooth = new SmoothRun(run, toleranceMm);
                all.addAll(smooth.drawn());
                curved += smooth.curved();
                kept += smooth.kept();
                most = Math.max(most, smooth.mostMm());
                run = new ArrayList<>();
            }
        }
        return new SmoothOutline(Path.of(all), corners, curved, kept, most);
    }

    private static List<Segment> withoutSlivers(Path closed) {
        List<Segment> strokes = new ArrayList<>();
        for (Segment s : closed.segments()) {
            if (!strokes.isEmpty() && s instanceof Line && s.start().isNear(s.end(), ONE_MM)) {
                Segment last = strokes.get(strokes.size() - 1);
                strokes.set(strokes.size() - 1, ended(last, s.end()));
            } else {
                strokes.add(s);
            }
        }
        return strokes;
    }

    private static Segment ended(Segment s, Point end) {
        return s instanceof Cubic c ? new Cubic(c.start(), c.handle1(), c.handle2(), end) : new Line(s.start(), end);
    }

    /** A vertex and by how much the line turns there. */
    record Bend(Point at, double turnRad) {

        static Bend before(List<Segment> closed, int i) {
            Segment arriving = closed.get(i == 0 ? closed.size() - 1 : i - 1);
            Segment leaving = closed.get(i);
            boolean none = !(arriving.length() > 0 && leaving.length() > 0);
            return new Bend(leaving.start(), none ? 0 : arriving.tangent(1).angleTo(leaving.tangent(0)));
        }
    }

    /** The strokes from one corner to the next. */
    private static final class SmoothRun {

        private final List<Segment> strokes;
        private final boolean[] straight;
        private final double tolerance;
        private int curved;
        private double most;

        SmoothRun(List<Segment> strokes, double tolerance) {
            this.strokes = strokes;
            this.tolerance = tolerance;
            this.straight = new boolean[strokes.size()];
            for (int i = 0; i < strokes.size(); i++) {
                straight[i] = strokes.size() < 2
                        || !(strokes.get(i) instanceof Line)
                        || !(strokes.get(i).length() > 0);
            }
            for (int round = 0; round < 2; round++) { // what stays straight bends its neighbours: look at them again
                boolean[] before = straight.clone();
                for (int i = 0; i < strokes.size(); i++) {
                    straight[i] = before[i] || off(curve(i, before)) > tolerance;
                }
            }
        }

        int curved() {
            return curved;
        }

        double mostMm() {
            return most;
        }

        /** Straight chords that bend at an end: those of one straight edge do not count. */
        int kept() {
            int bent = 0;
            for (int i = 0; i < strokes.size(); i++) {
                if (straight[i]
                        && i > 0
                        && straight[i - 1]
                        && strokes.get(i) instanceof Line
                        && strokes.get(i).length() > 0
                        && strokes.get(i - 1).length() > 0
                        && Math.abs(strokes.get(i - 1)
                                        .tangent(1)
                                        .angleTo(strokes.get(i).tangent(0)))
                                > 1e-3) {
                    bent++;
                }
            }
            return bent;
        }

        List<Segment> drawn() {
            List<Segment> all = new ArrayList<>();
            for (int i = 0; i < strokes.size(); i++) {
                Segment s = strokes.get(i);
                if (!straight[i]) {
                    Cubic curve = curve(i, straight);
                    double off = off(curve);
                    if (FLAT_MM < off && off <= tolerance) {
                        s = curve;
                        curved++;
                        most = Math.max(most, off);
                    }
                }
                all.add(s);
            }
            return all;
        }

        private Cubic curve(int i, boolean[] fixed) {
            Point from = strokes.get(i).start();
            Point to = strokes.get(i).end();
            Vec chord = to.minus(from);
            double length = chord.length();
            if (!(length > 0)) {
                return Cubic.of(from, Vec.ZERO, Vec.ZERO, to);
            }
            boolean first = i == 0;
            boolean last = i == strokes.size() - 1;
            double leaving = first ? 0 : chord.angleTo(direction(i, fixed));
            double arriving = last ? 0 : chord.angleTo(direction(i + 1, fixed));
            // Beside a corner nothing says the direction: that of a circle.
            leaving = first ? -arriving : leaving;
            arriving = last ? -leaving : arriving;
            leaving = Math.max(-STEEPEST_RAD, Math.min(leaving, STEEPEST_RAD));
            arriving = Math.max(-STEEPEST_RAD, Math.min(arriving, STEEPEST_RAD));
            double quarter = Math.cos((Math.abs(leaving) + Math.abs(arriving)) / 4);
            Vec handle = chord.times(1 / (3 * quarter * quarter));
            return Cubic.of(
                    from, handle.turned(leaving), handle.turned(arriving).reversed(), to);
        }

        /** The direction at the vertex before a stroke. */
        private Vec direction(int i, boolean[] fixed) {
            Segment before = strokes.get(i - 1);
            Segment after = strokes.get(i);
            if (!(before.length() > 0 && after.length() > 0)) {
                return after.end().minus(before.start());
            }
            if (fixed[i - 1]) {
                return before.tangent(1);
            }
            if (fixed[i]) {
                return after.tangent(0);
            }
            // The circle through three points leans towards the shorter chord.
            double a = before.length();
            double b = after.length();
            Vec u = before.tangent(1);
            return u.turned(u.angleTo(after.tangent(0)) * a / (a + b));
        }

        private static double off(Cubic curve) {
            double most = 0;
            Vec chord = curve.end().minus(curve.start());
            double length = chord.length();
            for (int i = 1; i < 8 && length > 0; i++) {
                most = Math.max(most, Math.abs(chord.cross(curve.at(i / 8.0).minus(curve.start()))) / length);
            }
            return most;
        }
    }
}
