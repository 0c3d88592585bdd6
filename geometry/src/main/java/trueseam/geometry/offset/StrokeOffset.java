package trueseam.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/**
 * The line beside one stroke. With unit tangent T, right normal n and signed curvature k (positive to the left) the line
 * at distance d to the right is {@code at(t) + d n}, and its derivative {@code (1 + d k) at'(t)}. A line stays a line; for a
 * curve, cubics with these end points and end derivatives are laid through and halved until they follow within tolerance.
 *
 * <p>Where 1 + d k turns negative the new line runs backwards (a cusp); that is told, not mended.
 */
final class StrokeOffset {

    private static final int DEEPEST = 14;
    private static final double[] PROBES = {0.1, 0.25, 0.5, 0.75, 0.9};

    private final Segment source;
    private final double distanceMm;
    private final double toleranceMm;
    private final List<Segment> strokes = new ArrayList<>();
    private boolean runsBackwards;

    private StrokeOffset(Segment source, double distanceMm, double toleranceMm) {
        this.source = source;
        this.distanceMm = distanceMm;
        this.toleranceMm = toleranceMm;
    }

    /** Works out the line to the right of a stroke that has a length. */
    static StrokeOffset of(Segment source, double distanceMm, double toleranceMm) {
        StrokeOffset offset = new StrokeOffset(source, distanceMm, toleranceMm);
        if (distanceMm == 0) {
            offset.strokes.add(source);
        } else if (source instanceof Line) {
            offset.strokes.add(new Line(offset.at(0), offset.at(1)));
        } else {
            offset.follow(0, 1, 0);
        }
        return offset;
    }

    List<Segment> strokes() {
        return strokes;
    }

    boolean runsBackwards() {
        return runsBackwards;
    }

    private void follow(double t0, double t1, int depth) {
        Point from = at(t0);
        Point to = at(t1);
        double third = (t1 - t0) / 3;
        Cubic c = Cubic.of(from, derivative(t0).times(third), derivative(t1).times(-third), to);
        if (depth > 0 && follows(c, t0, t1)) { // never one stroke: the probes of a symmetric S would all agree
            strokes.add(c);
            return;
        }
        if (depth >= DEEPEST) {
            throw new GeometryException("The line " + distanceMm + " mm beside a curve from " + source.start() + " to "
                    + source.end() + " cannot be drawn to " + toleranceMm + " mm; choose a coarser tolerance.");
        }
        double mid = (t0 + t1) / 2;
        follow(t0, mid, depth + 1);
        follow(mid, t1, depth + 1);
    }

    private boolean follows(Cubic c, double t0, double t1) {
        for (double probe : PROBES) {
            if (!c.at(probe).isNear(at(t0 + probe * (t1 - t0)), toleranceMm / 2)) {
                return false;
            }
        }
        return true;
    }

    private Point at(double t) {
        return source.at(t).plus(source.tangent(t).right().times(distanceMm));
    }

    private Vec derivative(double t) {
        double stretch = 1 + distanceMm * source.curvature(t);
        if (stretch < 0) {
            runsBackwards = true;
        }
        return source.derivative(t).times(stretch);
    }
}
