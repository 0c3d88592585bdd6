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
    private Vec heading;
    private double alongMm;
    private double sewnMm;

    /**
     * Begins at the centre.
     *
     * @param edge name of the edge that is drawn
     * @param centre where the waist meets the centre line
     */
    WaistLine(String edge, Point centre) {
        this(edge, centre, new Vec(1, 0));
    }

    /**
     * Begins at a centre that slants.
     *
     * @param edge name of the edge that is drawn
     * @param centre where the waist meets the centre line
     * @param heading direction in which it leaves it
     */
    WaistLine(String edge, Point centre, Vec heading) {
        this.edge = edge;
        this.at = centre;
        this.heading = heading;
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
        sew(name, left, right, apex, apex.y() > legY);
        return this;
    }

    private void sew(String name, Point left, Point right, Point apex, boolean up) {
        Vec arriving = square(apex.minus(left), up);
        smoothTo(left, arriving);
        double fromMm = alongMm;
        Vec mouth = right.minus(left);
        // By symmetry the continuations of both sides meet above the middle of the mouth, on the fold of the dart.
        straightTo(left.plus(arriving.times(mouth.length() / 2 / arriving.dot(mouth.unit()))));
        straightTo(right);
        darts.add(new Dart.EdgeDart(name, edge, fromMm, alongMm, apex));
        heading = square(apex.minus(right), up);
    }

    /**
     * Sews in a dart that goes down square to the straight line from the centre to the side, as on a waist that slopes.
     *
     * @param name name of the dart
     * @param share where its middle is, of the way from here to the side
     * @param side where the waist will meet the side seam
     * @param lengthMm from the middle of its mouth to its point
     * @param intakeMm distance of its legs at the waist, mm
     */
    WaistLine dartBelow(String name, double share, Point side, double lengthMm, double intakeMm) {
        Vec along = side.minus(at).unit();
        Point apex = at.towards(side, share).plus(along.right().times(lengthMm));
        Point middle = at.towards(side, share);
        Point left = middle.minus(along.times(intakeMm / 2));
        Point right = middle.plus(along.times(intakeMm / 2));
        sew(name, left, right, apex, false);
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
