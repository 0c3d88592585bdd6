package trueseam.output.dxf;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * A closed line as vertices of a polyline, told apart into corners and points of a curve.
 *
 * @param points every vertex, the first not repeated
 * @param turns those where the line turns: corners
 * @param curves those on a curve
 */
record CutLine(List<Point> points, List<Point> turns, List<Point> curves) {

    /** Chords lie so near to the line; the cutting line itself is as near to the true one, so both together keep to 0.02 mm. */
    static final double CHORD_MM = 0.01;

    /** How far what is written lies from the true line at most. */
    static final double TOLERANCE_MM = 0.02;

    /** A line that turns more in one point has a corner there; chords that stand for an offset curve turn less. */
    private static final double CORNER_RAD = Math.toRadians(8);

    /** A vertex within a straight line. */
    private static final double STRAIGHT_RAD = 1e-6;

    /** Vertices nearer than this are one. */
    private static final double ONE_MM = 0.005;

    static CutLine of(Path closed) {
        List<Point> points = new ArrayList<>();
        List<Point> turns = new ArrayList<>();
        List<Point> curves = new ArrayList<>();
        List<Segment> strokes =
                closed.segments().stream().filter(s -> s.length() > ONE_MM).toList();
        Segment before = strokes.get(strokes.size() - 1);
        for (Segment s : strokes) {
            points.add(s.start());
            double turn = Math.abs(before.tangent(1).angleTo(s.tangent(0)));
            if (turn > CORNER_RAD) {
                turns.add(s.start());
            } else if (turn > STRAIGHT_RAD || s instanceof Cubic || before instanceof Cubic) {
                curves.add(s.start());
            }
            List<Point> chain = Path.of(s).flattened(CHORD_MM);
            List<Point> between = chain.subList(1, chain.size() - 1);
            points.addAll(between);
            curves.addAll(between);
            before = s;
        }
        return new CutLine(points, turns, curves);
    }
}
