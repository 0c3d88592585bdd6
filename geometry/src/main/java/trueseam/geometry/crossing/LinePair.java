package trueseam.geometry.crossing;

import java.util.List;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** Where two straight strokes meet, also when they lie in one line or have no length. */
final class LinePair {

    private static final double NEAR = Crossings.SAME_POINT_MM;

    private LinePair() {}

    static List<Meeting> meetings(Segment a, Segment b) {
        Vec v = a.end().minus(a.start());
        Vec w = b.end().minus(b.start());
        double lengthA = v.length();
        double lengthB = w.length();
        Vec between = b.start().minus(a.start());
        if (lengthA <= NEAR || lengthB <= NEAR) {
            return lengthA <= lengthB ? onto(a.start(), b, false) : onto(b.start(), a, true);
        }
        double cross = v.cross(w);
        // Parallel as far as can be told: over the shorter of the two they part by less than the accuracy.
        if (Math.abs(cross) <= NEAR * Math.max(lengthA, lengthB)) {
            return shared(a, b, v.times(1 / lengthA), lengthA);
        }
        double s = between.cross(w) / cross * lengthA;
        double r = between.cross(v) / cross * lengthB;
        // An end that lies on the other line is a meeting although rounding puts it just beside.
        double slackA = NEAR * lengthA * lengthB / Math.abs(cross);
        if (-slackA <= s && s <= lengthA + slackA && -slackA <= r && r <= lengthB + slackA) {
            Meeting m = new Meeting(Crossing.Kind.POINT, StrokePair.parameter(a, s), StrokePair.parameter(b, r));
            return a.at(m.t()).isNear(b.at(m.u()), 2 * NEAR) ? List.of(m) : List.of();
        }
        return List.of();
    }

    private static List<Meeting> onto(Point p, Segment line, boolean swap) {
        double length = line.end().distanceTo(line.start());
        double along = length > 0 ? p.minus(line.start()).dot(line.end().minus(line.start())) / length : 0;
        double t = StrokePair.parameter(line, along);
        if (!line.at(t).isNear(p, NEAR)) {
            return List.of();
        }
        return List.of(swap ? new Meeting(Crossing.Kind.POINT, t, 0) : new Meeting(Crossing.Kind.POINT, 0, t));
    }

    /** The common stretch of two lines of one direction, ordered along a; its ends in place of a crossing. */
    private static List<Meeting> shared(Segment a, Segment b, Vec u, double lengthA) {
        Vec toStart = b.start().minus(a.start());
        Vec toEnd = b.end().minus(a.start());
        double first = u.dot(toStart);
        double last = u.dot(toEnd);
        double from = Math.max(0, Math.min(first, last));
        double to = Math.min(lengthA, Math.max(first, last));
        if (to < from - NEAR) {
            return List.of();
        }
        Meeting begin = at(a, b, from, first, last);
        Meeting end = at(a, b, Math.max(from, to), first, last);
        boolean beginMeets = a.at(begin.t()).isNear(b.at(begin.u()), 2 * NEAR);
        boolean endMeets = a.at(end.t()).isNear(b.at(end.u()), 2 * NEAR);
        if (to - from > NEAR && beginMeets && endMeets) {
            return List.of(
                    new Meeting(Crossing.Kind.SHARED_FROM, begin.t(), begin.u()),
                    new Meeting(Crossing.Kind.SHARED_TO, end.t(), end.u()));
        }
        if (beginMeets) {
            return List.of(begin);
        }
        return endMeets ? List.of(end) : List.of();
    }

    private static Meeting at(Segment a, Segment b, double alongA, double first, double last) {
        double share = (alongA - first) / (last - first);
        return new Meeting(
                Crossing.Kind.POINT,
                StrokePair.parameter(a, alongA),
                StrokePair.parameter(b, share * b.end().distanceTo(b.start())));
    }
}
