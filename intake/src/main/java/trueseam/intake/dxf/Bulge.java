package trueseam.intake.dxf;

import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Curves;

/**
 * The stroke of a polyline from one vertex to the next. Its bulge is the tangent of a quarter of the turn of an arc, positive to the left
 * of travel turning anticlockwise. Source: DXF reference, LWPOLYLINE, group 42.
 */
final class Bulge {

    /** An arc that rises less above its chord is straight: a hundredth of what a path takes for a gap. */
    private static final double STRAIGHT_MM = 1e-8;

    /** Below this one cubic is a flat arc to 1e-8 of its chord, and the centre lies too far off to reckon with. */
    private static final double FLAT = 0.01;

    private Bulge() {}

    static List<? extends Segment> stroke(Point from, Point to, double bulge) {
        double chord = from.distanceTo(to);
        if (Math.abs(bulge) * chord / 2 < STRAIGHT_MM) {
            return List.of(new Line(from, to));
        }
        if (!(Math.abs(bulge) <= 1e4)) {
            throw new EntityException("a bulge of " + bulge + " is no arc");
        }
        if (Math.abs(bulge) < FLAT) {
            // Handles of 4/3 tan(turn / 4) radii; with r = chord (1 + b²) / (4 b) they are chord (1 + b²) / 3 long.
            Vec along = to.minus(from).unit().times(chord * (1 + bulge * bulge) / 3);
            double half = 2 * Math.atan(bulge);
            return List.of(
                    Cubic.of(from, along.turned(-half), along.turned(half).reversed(), to));
        }
        double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        return Curves.ellipticalArc(from, new Vec(radius, radius), 0, Math.abs(bulge) > 1, bulge > 0, to);
    }
}
