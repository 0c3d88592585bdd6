package trueseam.geometry.crossing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Where two cubics meet. Both are halved, parts whose boxes or strips do not meet are dropped, and where the directions of
 * two parts have nothing in common (so that they meet once at most: T. W. Sederberg and R. J. Meyers, "Loop detection in
 * surface patch intersections", Computer Aided Geometric Design 5, 1988, the case of curves) Newton's method finishes.
 * Parts shorter than a millionth of a millimetre that still meet are a touch.
 *
 * <p>Curves that run along each other would be halved without end: after a number of steps that no plain crossing needs
 * the pair is tested for a shared stretch, and after many more it is refused.
 *
 * <p>One search, one thread.
 */
final class CurvePair {

    private static final double NEAR = Crossings.SAME_POINT_MM;
    private static final double TOUCH_MM = 1e-6;
    private static final double TOUCH_RUN_MM = 1e-5; // specks of one touch lie side by side
    private static final int SUSPICIOUS = 400;
    private static final int MOST = 100_000;

    private final Cubic a;
    private final Cubic b;
    private final List<Meeting> found = new ArrayList<>();
    private final List<Meeting> touches = new ArrayList<>();
    private int steps;
    private List<Meeting> shared = List.of();

    private CurvePair(Cubic a, Cubic b) {
        this.a = a;
        this.b = b;
    }

    static List<Meeting> meetings(Cubic a, Cubic b) {
        CurvePair pair = new CurvePair(a, b);
        pair.search(CurvePiece.of(a), CurvePiece.of(b));
        if (!pair.shared.isEmpty()) {
            return pair.shared;
        }
        pair.addTouches();
        return pair.found;
    }

    private void search(CurvePiece p, CurvePiece q) {
        if (!shared.isEmpty() || !p.boxMeets(q, NEAR) || !p.stripMeets(q, NEAR) || !q.stripMeets(p, NEAR)) {
            return;
        }
        steps++;
        if (steps == SUSPICIOUS) {
            shared = SharedStretch.of(a, b);
        }
        if (steps > MOST) {
            throw new GeometryException("Two curves from " + a.start() + " and from " + b.start()
                    + " run along each other too nearly to tell where they cross; move one of them.");
        }
        double reachP = p.reach();
        double reachQ = q.reach();
        if (reachP <= TOUCH_MM && reachQ <= TOUCH_MM) {
            touch(p, q);
            return;
        }
        if (isJoint(p, q) || (meetOnceAtMost(p, q) && newton(p, q))) {
            return;
        }
        boolean halveP = reachP > TOUCH_MM && reachP >= reachQ / 4;
        boolean halveQ = reachQ > TOUCH_MM && reachQ >= reachP / 4;
        if (halveP && halveQ) {
            CurvePiece p1 = p.firstHalf();
            CurvePiece p2 = p.secondHalf();
            CurvePiece q1 = q.firstHalf();
            CurvePiece q2 = q.secondHalf();
            search(p1, q1);
            search(p1, q2);
            search(p2, q1);
            search(p2, q2);
        } else if (halveP) {
            search(p.firstHalf(), q);
            search(p.secondHalf(), q);
        } else {
            search(p, q.firstHalf());
            search(p, q.secondHalf());
        }
    }

    /**
     * Whether one part ends where the other begins and both go forward all the way, so that they meet nowhere else. Without
     * this, the joints of a smooth outline would be halved down to specks.
     */
    private boolean isJoint(CurvePiece p, CurvePiece q) {
        if (p.t1() == 1 && q.t0() == 0 && a.end().equals(b.start()) && p.goesOnInto(q)) {
            add(new Meeting(Crossing.Kind.POINT, 1, 0), NEAR);
            return true;
        }
        if (q.t1() == 1 && p.t0() == 0 && b.end().equals(a.start()) && q.goesOnInto(p)) {
            add(new Meeting(Crossing.Kind.POINT, 0, 1), NEAR);
            return true;
        }
        return false;
    }

    private static boolean meetOnceAtMost(CurvePiece p, CurvePiece q) {
        double spread = p.spread() + q.spread();
        if (!(spread < Math.PI / 2)) {
            return false;
        }
        double between = Math.abs(Math.IEEEremainder(p.chordAngle() - q.chordAngle(), Math.PI));
        return between > spread;
    }

    /** Newton from the crossing of the chords; true if it arrived within both parts. */
    private boolean newton(CurvePiece p, CurvePiece q) {
        double t = (p.t0() + p.t1()) / 2;
        double u = (q.t0() + q.t1()) / 2;
        double slackT = (p.t1() - p.t0()) / 2;
        double slackU = (q.t1() - q.t0()) / 2;
        for (int i = 0; i < 12; i++) {
            double x = gapX(t, u);
            double y = gapY(t, u);
            double ax = speedX(a, t);
            double ay = speedY(a, t);
            double bx = speedX(b, u);
            double by = speedY(b, u);
            double det = ax * by - ay * bx;
            double stepT = (x * by - y * bx) / det;
            double stepU = (x * ay - y * ax) / det;
            t += stepT;
            u += stepU;
            if (!(p.t0() - slackT <= t && t <= p.t1() + slackT && q.t0() - slackU <= u && u <= q.t1() + slackU)) {
                return false;
            }
            if (Math.abs(stepT) <= 1e-14 && Math.abs(stepU) <= 1e-14) {
                break;
            }
        }
        double edge = 1e-12;
        boolean within = p.t0() - edge <= t && t <= p.t1() + edge && q.t0() - edge <= u && u <= q.t1() + edge;
        if (!within) {
            return false;
        }
        t = Math.max(0, Math.min(1, t));
        u = Math.max(0, Math.min(1, u));
        if (!a.at(t).isNear(b.at(u), NEAR / 10)) {
            return false;
        }
        add(new Meeting(Crossing.Kind.POINT, t, u), 1e-8);
        return true;
    }

    private double gapX(double t, double u) {
        return at(b.start().x(), b.handle1().x(), b.handle2().x(), b.end().x(), u)
                - at(a.start().x(), a.handle1().x(), a.handle2().x(), a.end().x(), t);
    }

    private double gapY(double t, double u) {
        return at(b.start().y(), b.handle1().y(), b.handle2().y(), b.end().y(), u)
                - at(a.start().y(), a.handle1().y(), a.handle2().y(), a.end().y(), t);
    }

    private static double at(double c0, double c1, double c2, double c3, double t) {
        double s = 1 - t;
        return s * s * (s * c0 + 3 * t * c1) + t * t * (3 * s * c2 + t * c3);
    }

    private static double speedX(Cubic c, double t) {
        return slope(c.start().x(), c.handle1().x(), c.handle2().x(), c.end().x(), t);
    }

    private static double speedY(Cubic c, double t) {
        return slope(c.start().y(), c.handle1().y(), c.handle2().y(), c.end().y(), t);
    }

    private static double slope(double c0, double c1, double c2, double c3, double t) {
        double s = 1 - t;
        return 3 * (s * s * (c1 - c0) + 2 * s * t * (c2 - c1) + t * t * (c3 - c2));
    }

    /** Two specks that may touch: where they come nearest, if that is near enough. */
    private void touch(CurvePiece p, CurvePiece q) {
        Meeting best = nearest(p, q, q.t0());
        for (double u : new double[] {(q.t0() + q.t1()) / 2, q.t1()}) {
            Meeting m = nearest(p, q, u);
            best = gap(m) < gap(best) ? m : best;
        }
        if (gap(best) <= NEAR) {
            touches.add(best);
        }
    }

    private Meeting nearest(CurvePiece p, CurvePiece q, double startU) {
        double u = startU;
        double t = p.t0();
        for (int i = 0; i < 4; i++) {
            t = foot(a, b.at(u), p);
            u = foot(b, a.at(t), q);
        }
        return new Meeting(Crossing.Kind.POINT, t, u);
    }

    /** The foot of a square from a point to a speck of curve, which is as good as straight. */
    private static double foot(Cubic c, Point from, CurvePiece within) {
        double mid = (within.t0() + within.t1()) / 2;
        Vec speed = c.derivative(mid);
        double square = speed.dot(speed);
        double t = square > 0 ? mid + from.minus(c.at(mid)).dot(speed) / square : mid;
        return Math.max(within.t0(), Math.min(within.t1(), t));
    }

    private double gap(Meeting m) {
        return a.at(m.t()).distanceTo(b.at(m.u()));
    }

    /** Touching curves stay within rounding for many specks on end: of each run the nearest place stays. */
    private void addTouches() {
        touches.sort(Comparator.comparingDouble(Meeting::t));
        List<Meeting> best = new ArrayList<>();
        List<Meeting> last = new ArrayList<>();
        for (Meeting m : touches) {
            int run = last.size() - 1;
            while (run >= 0 && !isSame(last.get(run), m, TOUCH_RUN_MM)) {
                run--;
            }
            if (run < 0) {
                best.add(m);
                last.add(m);
            } else {
                last.set(run, m);
                best.set(run, gap(m) < gap(best.get(run)) ? m : best.get(run));
            }
        }
        for (Meeting m : best) {
            add(m, TOUCH_RUN_MM);
        }
    }

    private void add(Meeting m, double sameMm) {
        for (Meeting old : found) {
            if (isSame(old, m, sameMm)) {
                return;
            }
        }
        found.add(m);
    }

    private boolean isSame(Meeting m, Meeting n, double sameMm) {
        return a.at(m.t()).isNear(a.at(n.t()), sameMm) && b.at(m.u()).isNear(b.at(n.u()), sameMm);
    }
}
