package trueseam.geometry.join;

import java.util.Optional;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Finds how many times as long the handles must be for the curve to have a length. The velocity of the curve at each t is
 * an affine function of that scale, its size therefore convex, and so is the length, an integral of sizes. At scale 0 the
 * length is the chord, which nothing undercuts: so from 0 upwards the length never falls, and where it rises it has each
 * value once. The one solution in the bracket is the only one and the gentlest.
 */
final class LengthSearch {

    /** Handles a twentieth as long as the gentle ones: shorter would be a corner in all but name. */
    private static final double SHORTEST_SCALE = 0.05;

    private static final double LONGEST_SCALE = 8;
    private static final double LENGTH_MM = 1e-10; // a tenth of what is promised
    private static final int SCAN = 32;

    /** First step of the secant; small against the bend of the length over the scale, large against rounding. */
    private static final double FIRST_STEP = 0.01;

    /** Steps of the secant before the bracket takes over; lengths asked of truing need 3 to 6. */
    private static final int SECANTS = 9;

    private final Point a;
    private final Vec startUnit;
    private final Point b;
    private final Vec endUnit;
    private final Vec startHandle; // of the gentle curve
    private final Vec endHandle;

    LengthSearch(Point a, Vec startUnit, Point b, Vec endUnit) {
        this.a = a;
        this.startUnit = startUnit;
        this.b = b;
        this.endUnit = endUnit;
        Cubic gentle = Joining.smooth(a, startUnit, b, endUnit);
        this.startHandle = gentle.handle1().minus(a);
        this.endHandle = gentle.handle2().minus(b);
    }

    Cubic of(double lengthMm) {
        Cubic gentle = at(1);
        double one = gentle.length();
        if (Math.abs(one - lengthMm) <= LENGTH_MM && isPlain(gentle)) {
            return gentle;
        }
        Optional<Cubic> near = bySecant(lengthMm, one);
        if (near.isPresent() && isPlain(near.get())) {
            return near.get();
        }
        double shortest = at(SHORTEST_SCALE).length();
        double longest = at(LONGEST_SCALE).length();
        if (!(shortest - LENGTH_MM <= lengthMm && lengthMm <= longest)) {
            throw outOfReach(lengthMm, shortest);
        }
        Cubic found = at(
                lengthMm < one
                        ? solve(lengthMm, SHORTEST_SCALE, shortest, 1, one)
                        : solve(lengthMm, 1, one, LONGEST_SCALE, longest));
        if (!isPlain(found)) {
            throw outOfReach(lengthMm, shortest);
        }
        return found;
    }

    private Cubic at(double scale) {
        return Cubic.of(a, startHandle.times(scale), endHandle.times(scale), b);
    }

    /**
     * The wanted length is mostly near that of the gentle curve, and the ends of the bracket are curves that are costly to measure.
     * Whatever is found within the bracket is the one solution; where the secant leaves it or is slow, nothing is.
     */
    private Optional<Cubic> bySecant(double lengthMm, double one) {
        double last = 1;
        double lastMiss = one - lengthMm;
        double scale = lastMiss < 0 ? 1 + FIRST_STEP : 1 - FIRST_STEP;
        for (int i = 0; i < SECANTS && SHORTEST_SCALE <= scale && scale <= LONGEST_SCALE; i++) {
            Cubic tried = at(scale);
            double miss = tried.length() - lengthMm;
            if (Math.abs(miss) <= LENGTH_MM) {
                return Optional.of(tried);
            }
            double next = scale - miss * (scale - last) / (miss - lastMiss);
            last = scale;
            lastMiss = miss;
            scale = next;
        }
        return Optional.empty();
    }

    /** False position with the Illinois correction: the bracket holds the one solution throughout. */
    private double solve(double lengthMm, double shortScale, double shortMm, double longScale, double longMm) {
        double lo = shortScale;
        double hi = longScale;
        double below = shortMm - lengthMm;
        double above = longMm - lengthMm;
        int side = 0;
        double scale = lo;
        for (int i = 0; i < 200 && hi - lo > 1e-16 * hi; i++) {
            scale = above > below && i % 3 != 2 ? (lo * above - hi * below) / (above - below) : (lo + hi) / 2;
            double miss = at(scale).length() - lengthMm;
            if (Math.abs(miss) <= LENGTH_MM) {
                return scale;
            }
            if (miss < 0) {
                lo = scale;
                below = miss;
                above = side < 0 ? above / 2 : above;
                side = -1;
            } else {
                hi = scale;
                above = miss;
                below = side > 0 ? below / 2 : below;
                side = 1;
            }
        }
        return scale;
    }

    /** Whether the curve neither crosses itself nor stands still nor doubles back on a straight line. */
    private boolean isPlain(Cubic c) {
        Vec chord = b.minus(a);
        double straight = 1e-12;
        boolean within = Math.abs(chord.unit().cross(startUnit)) <= straight
                && Math.abs(chord.unit().cross(endUnit)) <= straight;
        if (within) {
            return c.length() <= chord.length() + LENGTH_MM;
        }
        return c.selfCrossing().isEmpty();
    }

    private LengthOutOfReachException outOfReach(double lengthMm, double shortest) {
        double lo = SHORTEST_SCALE;
        double hi = LONGEST_SCALE;
        for (int i = 1; i <= SCAN; i++) {
            double scale = SHORTEST_SCALE + (LONGEST_SCALE - SHORTEST_SCALE) * i / SCAN;
            if (!isPlain(at(scale))) {
                hi = scale;
                break;
            }
            lo = scale;
        }
        for (int i = 0; i < 40 && lo < hi; i++) {
            double mid = (lo + hi) / 2;
            if (isPlain(at(mid))) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return new LengthOutOfReachException(a, b, lengthMm, shortest, at(lo).length());
    }
}
