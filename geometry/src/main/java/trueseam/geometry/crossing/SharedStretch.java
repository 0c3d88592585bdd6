package trueseam.geometry.crossing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;

/**
 * The stretch along which two cubics are one line. Such cubics are parts of one polynomial curve, so the stretch ends only
 * where one of the two ends, and cut out of both it has the same handles.
 */
final class SharedStretch {

    private static final double NEAR = Crossings.SAME_POINT_MM;

    /** Handles of the cut-out parts: rounding of the ends, which are known to NEAR, grows when a part is short. */
    private static final double HANDLE_MM = 10 * NEAR;

    private SharedStretch() {}

    static List<Meeting> of(Cubic a, Cubic b) {
        List<Meeting> ends = new ArrayList<>(4);
        for (double u : new double[] {0, 1}) {
            double t = on(a, b.at(u));
            if (t >= 0) {
                ends.add(new Meeting(Crossing.Kind.POINT, t, u));
            }
        }
        for (double t : new double[] {0, 1}) {
            double u = on(b, a.at(t));
            if (u >= 0) {
                ends.add(new Meeting(Crossing.Kind.POINT, t, u));
            }
        }
        if (ends.size() < 2) {
            return List.of();
        }
        ends.sort(Comparator.comparingDouble(Meeting::t));
        Meeting from = ends.get(0);
        Meeting to = ends.get(ends.size() - 1);
        if (!(to.t() - from.t() > 1e-9)) {
            return List.of();
        }
        Cubic ofA = a.between(from.t(), to.t());
        Cubic ofB = from.u() < to.u()
                ? b.between(from.u(), to.u())
                : b.between(to.u(), from.u()).reversed();
        if (!ofA.handle1().isNear(ofB.handle1(), HANDLE_MM) || !ofA.handle2().isNear(ofB.handle2(), HANDLE_MM)) {
            return List.of();
        }
        return List.of(
                new Meeting(Crossing.Kind.SHARED_FROM, from.t(), from.u()),
                new Meeting(Crossing.Kind.SHARED_TO, to.t(), to.u()));
    }

    /** The parameter at which the curve passes the point, or -1 if it does not. */
    private static double on(Cubic c, Point p) {
        PathPlace nearest = Path.of(c).nearest(p);
        return nearest.point().isNear(p, NEAR) ? c.parameterAt(nearest.alongMm()) : -1;
    }
}
