package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * A waist line drawn from the centre to the side, with the darts sewn into it. It leaves the centre square to it, meets
 * each leg of a dart square, so that it runs smooth once the dart is sewn, and arrives at the side in a given direction.
 *
 * <pre>{@code
 *             apex                   square legs: both halves of the cap are the
 *             /\                     straight continuation of the waist on either
 *     _______/  \_______             side, and folding the dart to the centre or
 *   centre   \__/       ---side      to the side lays them on it alike.
 *             cap
 * }</pre>
 */
final class WaistLine {

    private final String edge;
    private final List<Segment> strokes = new ArrayList<>();
    private final List<Dart> darts = new ArrayList<>();
    private Point at;
    private Vec heading = new Vec(1, 0);
    private double alongMm;
    private double sewnMm;

    /**
     * Begins at the centre.
     *
     * @param edge name of the edge that is drawn
     * @param centre where the waist meets the centre line
     */
    WaistLine(String edge, Point centre) {
        this.edge = edge;
        this.at = centre;
    }

    /**
     * Sews in a dart upright to its apex.
     *
     * @param name name of the dart
     * @param apex its point, above or below the waist
     * @param intakeMm distance of its legs at the waist, mm
     */
    WaistLine dart(String name, Point apex, double intakeMm) {
        double legX = apex.x() - intakeMm / 2;
        double legY = at.y();
        for (int i = 0; i < 3; i++) { // where the waist comes to lie depends a little on how the legs lean
            double lean = Math.atan2(intakeMm / 2, apex.y() - legY);
            double square = apex.y() > legY ? -lean : Math.PI - lean;
            legY = at.y() + (legX - at.x()) * Math.tan((heading.angle() + square) / 2);
        }
        Point left = new Point(legX, legY);
        Point right = new Point(apex.x() + intakeMm / 2, legY);
        boolean up = apex.y() > legY;
        Vec arriving = square(apex.minus(left), up);
        Vec leaving = square(apex.minus(right), up);
        smoothTo(left, arriving);
        double fromMm = alongMm;
        double half = intakeMm / 2;
        Point cap = left.plus(arriving.times(half / arriving.x()));
        straightTo(cap);
        straightTo(right);
        darts.add(new Dart.EdgeDart(name, edge, fromMm, alongMm, apex));
        heading = leaving;
        return this;
    }

    private static Vec square(Vec leg, boolean up) {
        return up ? leg.unit().right() : leg.unit().left();
    }

    /**
     * Where the line comes to lie at the side if it bends no more than it must, with a share of the whole bend.
     *
     * @param x of the side, mm
     * @param arriving direction at the side
     * @param share 1 for the even bend, less to keep the side nearer to the height reached
     * @return y, mm
     */
    double sideHeight(double x, Vec arriving, double share) {
        return at.y() + share * (x - at.x()) * Math.tan((heading.angle() + arriving.angle()) / 2);
    }

    /**
     * Draws on to the side.
     *
     * @param side where the waist meets the side seam
     * @param arriving direction of travel there
     */
    WaistLine side(Point side, Vec arriving) {
        smoothTo(side, arriving);
        return this;
    }

    private void smoothTo(Point to, Vec arriving) {
        Segment stroke = Joining.smooth(at, heading, to, arriving);
        strokes.add(stroke);
        double mm = stroke.length();
        alongMm += mm;
        sewnMm += mm;
        at = to;
    }

    private void straightTo(Point to) {
        Line stroke = new Line(at, to);
        strokes.add(stroke);
        alongMm += stroke.length();
        at = to;
    }

    /** The length as sewn, darts left out, mm. */
    double sewnMm() {
        return sewnMm;
    }

    /** From centre to side. */
    Path path() {
        return Path.of(strokes);
    }

    /** Places on {@link #path}. */
    List<Dart> darts() {
        return darts;
    }

    /** Places on {@link #path} reversed, for outlines that run from side to centre. */
    List<Dart> dartsReversed() {
        List<Dart> back = new ArrayList<>();
        for (Dart dart : darts) {
            if (dart instanceof Dart.EdgeDart d) {
                back.add(new Dart.EdgeDart(d.name(), d.edge(), alongMm - d.toMm(), alongMm - d.fromMm(), d.apex()));
            }
        }
        return back;
    }
}
