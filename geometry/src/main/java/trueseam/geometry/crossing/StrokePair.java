package trueseam.geometry.crossing;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** Where two strokes meet. A curve that is a straight line in fact is treated as that line. */
final class StrokePair {

    private static final double NEAR = Crossings.SAME_POINT_MM;

    private StrokePair() {}

    static List<Meeting> meetings(Segment a, Segment b) {
        if (a.end().equals(b.start()) && goesOnInto(a, b)) {
            return List.of(new Meeting(Crossing.Kind.POINT, 1, 0));
        }
        if (b.end().equals(a.start()) && goesOnInto(b, a)) {
            return List.of(new Meeting(Crossing.Kind.POINT, 0, 1));
        }
        boolean straightA = isStraight(a);
        boolean straightB = isStraight(b);
        if (straightA && straightB) {
            return LinePair.meetings(a, b);
        }
        if (straightA) {
            return lineAndCurve(a, (Cubic) b);
        }
        if (straightB) {
            return swapped(lineAndCurve(b, (Cubic) a));
        }
        return CurvePair.meetings((Cubic) a, (Cubic) b);
    }

    /** Whether all of the next stroke lies beyond the joint, seen in the common direction: the usual joint of an outline. */
    private static boolean goesOnInto(Segment one, Segment next) {
        Vec u = next.end().minus(one.start());
        return advances(one, u) && advances(next, u);
    }

    private static boolean advances(Segment s, Vec u) {
        if (s instanceof Cubic c) {
            return u.dot(c.handle1().minus(c.start())) >= 0
                    && u.dot(c.handle2().minus(c.handle1())) > 0
                    && u.dot(c.end().minus(c.handle2())) >= 0;
        }
        return u.dot(s.end().minus(s.start())) > 0;
    }

    private static List<Meeting> swapped(List<Meeting> all) {
        List<Meeting> back = new ArrayList<>(all.size());
        for (Meeting m : all) {
            back.add(m.swapped());
        }
        return back;
    }

    /** Whether a stroke covers the straight line between its ends once, within a tenth of the accuracy promised. */
    private static boolean isStraight(Segment s) {
        if (s instanceof Line) {
            return true;
        }
        Cubic c = (Cubic) s;
        Vec chord = c.end().minus(c.start());
        double length = chord.length();
        if (length <= NEAR) {
            return c.handle1().distanceTo(c.start()) <= NEAR && c.handle2().distanceTo(c.start()) <= NEAR;
        }
        Vec u = chord.times(1 / length);
        Vec first = c.handle1().minus(c.start());
        Vec second = c.handle2().minus(c.start());
        double s1 = u.dot(first);
        double s2 = u.dot(second);
        return Math.abs(u.cross(first)) <= NEAR / 10
                && Math.abs(u.cross(second)) <= NEAR / 10
                && 0 <= s1
                && s1 <= s2
                && s2 <= length;
    }

    /** The parameter of a straight stroke at a length from its start. */
    static double parameter(Segment straight, double alongMm) {
        return straight.parameterAt(Math.max(0, Math.min(straight.length(), alongMm)));
    }

    private static List<Meeting> lineAndCurve(Segment line, Cubic c) {
        Point p = line.start();
        double length = line.end().distanceTo(p);
        List<Meeting> found = new ArrayList<>();
        if (length <= NEAR) {
            return pointAndCurve(p, c);
        }
        Vec u = line.end().minus(p).times(1 / length);
        for (double t : zeros(c, p, u)) {
            double along = u.dot(c.at(t).minus(p));
            if (-NEAR <= along && along <= length + NEAR) {
                found.add(new Meeting(Crossing.Kind.POINT, parameter(line, along), t));
            }
        }
        return found;
    }

    private static List<Meeting> pointAndCurve(Point p, Cubic c) {
        double along = trueseam.geometry.Path.of(c).nearest(p).alongMm();
        double t = c.parameterAt(along);
        return c.at(t).isNear(p, NEAR) ? List.of(new Meeting(Crossing.Kind.POINT, 0, t)) : List.of();
    }

    /** Crossings with the line without ends, and the ends and turning points that touch it to within rounding. */
    private static List<Double> zeros(Cubic c, Point p, Vec u) {
        List<Double> all = new ArrayList<>();
        double f0 = u.cross(c.start().minus(p));
        double f1 = u.cross(c.handle1().minus(p));
        double f2 = u.cross(c.handle2().minus(p));
        double f3 = u.cross(c.end().minus(p));
        if (Math.abs(f0) <= NEAR) {
            all.add(0.0);
        }
        if (Math.abs(f3) <= NEAR) {
            all.add(1.0);
        }
        for (double t : c.crossings(p, u)) {
            addNew(all, t, c);
        }
        double a = f3 - 3 * f2 + 3 * f1 - f0;
        double b = 2 * (f2 - 2 * f1 + f0);
        double d = f1 - f0;
        double disc = b * b - 4 * a * d;
        if (disc >= 0) {
            double q = -(b + Math.copySign(Math.sqrt(disc), b)) / 2;
            for (double t : new double[] {q / a, d / q}) {
                if (0 < t && t < 1 && Math.abs(u.cross(c.at(t).minus(p))) <= NEAR) {
                    addNew(all, t, c);
                }
            }
        }
        return all;
    }

    /** A touching curve stays within rounding for some 1e-4 mm: one touch, not two crossings. */
    private static void addNew(List<Double> all, double t, Cubic c) {
        for (double old : all) {
            if (c.at(old).isNear(c.at(t), 1e-7)) {
                return;
            }
        }
        all.add(t);
    }
}
