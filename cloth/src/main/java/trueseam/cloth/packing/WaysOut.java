package trueseam.cloth.packing;

/** The two heaviest overlaps of a copy, and the ways out of them. */
final class WaysOut {

    final double[] way = new double[2];
    int found;
    double heaviest;
    double ax;
    double ay;
    double second;
    double bx;
    double by;

    void clear() {
        found = 0;
        heaviest = 0;
        second = 0;
    }

    void add(double weight, double wx, double wy) {
        found++;
        if (weight > heaviest) {
            second = heaviest;
            bx = ax;
            by = ay;
            heaviest = weight;
            ax = wx;
            ay = wy;
        } else if (weight > second) {
            second = weight;
            bx = wx;
            by = wy;
        }
    }

    /** The one way that leads out of both: into the corner between them. False where they lead the same way or apart. */
    boolean both(double[] into) {
        double na = ax * ax + ay * ay;
        double nb = bx * bx + by * by;
        double cross = ax * by - ay * bx;
        if (cross * cross < 1e-4 * na * nb) {
            return false;
        }
        // s . a = |a|^2 and s . b = |b|^2
        into[0] = (na * by - nb * ay) / cross;
        into[1] = (nb * ax - na * bx) / cross;
        return true;
    }
}
