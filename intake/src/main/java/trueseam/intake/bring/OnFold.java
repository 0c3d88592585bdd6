package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;

/**
 * Half a piece and the fold it is cut on. Nothing is sewn at a fold, so a line inside the piece is drawn on the unfolded one and folded again.
 *
 * @param open the outline but for the part on the fold, from the fold to the fold
 * @param upright how the fold comes to lie on the y axis, the piece wherever it then is
 */
record OnFold(Path open, Motion upright) {

    /** A stroke on the fold lies so near to its line. */
    private static final double ON_FOLD_MM = 0.5;

    private static final double AT_END_MM = 1e-3;

    /** The half of an outline at its mirror line; nothing where no stroke of it, or more than one part, lies there. */
    static Optional<OnFold> of(Path outline, Path fold) {
        Vec along = fold.end().minus(fold.start());
        if (!(along.length() > 0)) {
            return Optional.empty();
        }
        List<Segment> strokes = outline.segments();
        int n = strokes.size();
        int after = -1;
        int parts = 0;
        for (int i = 0; i < n; i++) {
            if (isOn(strokes.get(i), fold.start(), along) && !isOn(strokes.get((i + 1) % n), fold.start(), along)) {
                after = (i + 1) % n;
                parts++;
            }
        }
        if (parts != 1) {
            return Optional.empty();
        }
        List<Segment> rest = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Segment stroke = strokes.get((after + i) % n);
            if (!isOn(stroke, fold.start(), along)) {
                rest.add(stroke);
            }
        }
        Motion toAxis = Motion.slide(Point.ORIGIN.minus(fold.start()))
                .then(Motion.pivot(Point.ORIGIN, Math.PI / 2 - along.angle()));
        return Optional.of(new OnFold(Path.of(rest), toAxis));
    }

    private static boolean isOn(Segment stroke, Point fold, Vec along) {
        return List.of(stroke.start(), stroke.at(0.5), stroke.end()).stream()
                .allMatch(p -> Math.abs(along.cross(p.minus(fold))) <= ON_FOLD_MM * along.length());
    }

    /** The whole piece, its ends put on the fold exactly. */
    Path unfolded() {
        Path half = onAxis(open.moved(upright));
        return half.then(Mirror.of(half).reversed()).moved(upright.inverse());
    }

    private static Path onAxis(Path half) {
        List<Segment> all = new ArrayList<>();
        Point start = new Point(0, half.start().y());
        Point end = new Point(0, half.end().y());
        bridge(all, start, half.start());
        all.addAll(half.segments());
        bridge(all, half.end(), end);
        return Path.of(all);
    }

    private static void bridge(List<Segment> line, Point from, Point to) {
        if (!from.isNear(to, Path.CHAIN_MM)) {
            line.add(new Line(from, to));
        }
    }

    /** Of a line round the whole piece the half that this one is, closed along the fold. */
    Path folded(Path whole) {
        Path lying = whole.moved(upright);
        List<PathPlace> at = new ArrayList<>(lying.crossings(Point.ORIGIN, new Vec(0, 1)));
        at.sort(Comparator.comparingDouble(PathPlace::alongMm));
        // Where the line begins on the fold, it ends there too.
        at.removeIf(place ->
                place.alongMm() > lying.length() - AT_END_MM && at.get(0).alongMm() < AT_END_MM);
        if (at.size() != 2) {
            throw new GeometryException("It meets the fold at " + at.size() + " places, and two were expected.");
        }
        double a = at.get(0).alongMm();
        double b = at.get(1).alongMm();
        Path one = lying.part(a, b);
        Path other = b < lying.length() ? lying.part(b, lying.length()).then(lying.part(0, a)) : lying.part(0, a);
        boolean right = side(open.moved(upright)) > 0;
        Path half = side(one) > 0 == right ? one : other;
        return half.then(Path.through(half.end(), half.start())).moved(upright.inverse());
    }

    private static double side(Path half) {
        return half.bounds().centre().x();
    }
}
