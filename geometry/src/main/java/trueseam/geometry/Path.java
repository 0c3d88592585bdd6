package trueseam.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A chain of strokes, each beginning where the last one ended. A place on a path is a length from its start, in mm.
 *
 * <p>Laws: (1) {@code part(0, length())} is the path; (2) the lengths of two parts that meet add up; (3) moving changes
 * no length; (4) reversing twice gives the path; (5) the chain is never empty.
 *
 * <p>A path is closed when its end lies on its start; whether it is then meant as an outline is for its user to say.
 */
public final class Path {

    /** How far the end of one stroke may lie from the start of the next: rounding of a drawing, not a gap. */
    public static final double CHAIN_MM = 1e-6;

    /** Less than this of a stroke is rounding and no part of a line. */
    private static final double SLIVER_MM = 1e-9;

    private final List<Segment> segments;
    private final double[] ends; // length from the start of the path to the end of each stroke

    private Path(List<Segment> segments) {
        this.segments = segments;
        this.ends = new double[segments.size()];
        double sum = 0;
        for (int i = 0; i < ends.length; i++) {
            sum += segments.get(i).length();
            ends[i] = sum;
        }
    }

    /** For strokes whose lengths are known: measuring them is most of the work of making a path. */
    private Path(List<Segment> segments, double[] ends) {
        this.segments = segments;
        this.ends = ends;
    }

    /**
     * The path of the given strokes.
     *
     * @param segments at least one, each beginning within {@link #CHAIN_MM} of the end of the last
     * @return the path
     * @throws GeometryException if there is none, or a gap between two strokes
     */
    public static Path of(List<? extends Segment> segments) {
        if (segments.isEmpty()) {
            throw new GeometryException("A path needs at least one stroke.");
        }
        for (int i = 1; i < segments.size(); i++) {
            checkJoint(i, segments.get(i - 1).end(), segments.get(i).start());
        }
        return new Path(List.copyOf(segments));
    }

    private static void checkJoint(int stroke, Point end, Point start) {
        if (!end.isNear(start, CHAIN_MM)) {
            throw new GeometryException("Stroke " + stroke + " ends at " + end + " and the next begins at " + start
                    + ": a gap of " + end.distanceTo(start) + " mm; strokes of a path must meet.");
        }
    }

    /**
     * The path of the given strokes.
     *
     * @param segments at least one, each beginning where the last ended
     * @return the path
     */
    public static Path of(Segment... segments) {
        return of(Arrays.asList(segments));
    }

    /**
     * The straight path through the given points.
     *
     * @param points at least two
     * @return the path, with a stroke fewer than there are points
     * @throws GeometryException if there are fewer than two points
     */
    public static Path through(Point... points) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 1; i < points.length; i++) {
            lines.add(new Line(points[i - 1], points[i]));
        }
        return of(lines);
    }

    /**
     * The strokes in order.
     *
     * @return an unmodifiable list, never empty
     */
    public List<Segment> segments() {
        return segments;
    }

    /**
     * Where it begins.
     *
     * @return the first point
     */
    public Point start() {
        return segments.get(0).start();
    }

    /**
     * Where it ends.
     *
     * @return the last point
     */
    public Point end() {
        return segments.get(segments.size() - 1).end();
    }

    /**
     * Whether it ends where it began.
     *
     * @return true if end and start are within {@link #CHAIN_MM}
     */
    public boolean isClosed() {
        return start().isNear(end(), CHAIN_MM);
    }

    /**
     * The length along the path.
     *
     * @return mm
     */
    public double length() {
        return ends[ends.length - 1];
    }

    /**
     * The point at a length from the start.
     *
     * @param alongMm from 0 to {@link #length()}; a nearer end is taken for rounding beyond it of up to 1e-6 mm
     * @return the point
     * @throws GeometryException if the place is not on the path
     */
    public Point pointAt(double alongMm) {
        int i = strokeAt(alongMm);
        Segment s = segments.get(i);
        return s.at(parameter(i, alongMm));
    }

    /**
     * The direction of travel at a length from the start. At a corner: of the stroke that begins there.
     *
     * @param alongMm from 0 to {@link #length()}
     * @return unit vector
     */
    public Vec tangentAt(double alongMm) {
        int i = strokeAt(alongMm);
        while (i < ends.length - 1 && ends[i] - startOf(i) <= SLIVER_MM) {
            i++; // a stroke of no length has no direction: the one behind it has
        }
        while (i > 0 && ends[i] - startOf(i) <= SLIVER_MM) {
            i--;
        }
        Segment s = segments.get(i);
        return s.tangent(parameter(i, alongMm));
    }

    /**
     * The curvature at a length from the start.
     *
     * @param alongMm from 0 to {@link #length()}
     * @return 1/mm, positive where the path bends to the left
     */
    public double curvatureAt(double alongMm) {
        int i = strokeAt(alongMm);
        Segment s = segments.get(i);
        return s.curvature(parameter(i, alongMm));
    }

    /**
     * The direction in which it sets out.
     *
     * @return unit vector
     */
    public Vec startTangent() {
        for (Segment s : segments) {
            if (!isPoint(s)) {
                return s.tangent(0);
            }
        }
        throw new GeometryException("A path of no length at " + start() + " has no direction.");
    }

    /**
     * The direction in which it arrives.
     *
     * @return unit vector
     */
    public Vec endTangent() {
        for (int i = segments.size() - 1; i >= 0; i--) {
            if (!isPoint(segments.get(i))) {
                return segments.get(i).tangent(1);
            }
        }
        throw new GeometryException("A path of no length at " + start() + " has no direction.");
    }

    /** A stroke has a length unless all its points are one; asked so, nothing is measured. */
    private static boolean isPoint(Segment s) {
        boolean closed = s.start().distanceTo(s.end()) == 0;
        return s instanceof Cubic c
                ? closed && s.start().distanceTo(c.handle1()) == 0 && s.end().distanceTo(c.handle2()) == 0
                : closed;
    }

    /**
     * Where a stroke begins.
     *
     * @param stroke index in {@link #segments()}; their number for the end of the path
     * @return length from the start of the path, mm
     */
    public double startOf(int stroke) {
        return stroke == 0 ? 0 : ends[stroke - 1];
    }

    private double parameter(int stroke, double alongMm) {
        double along = alongMm - startOf(stroke);
        Segment s = segments.get(stroke);
        return s instanceof Cubic c
                ? ArcLength.parameterAt(c, along, ends[stroke] - startOf(stroke))
                : s.parameterAt(along);
    }

    private int strokeAt(double alongMm) {
        if (!(-CHAIN_MM <= alongMm && alongMm <= length() + CHAIN_MM)) {
            throw new GeometryException(
                    "A place at " + alongMm + " mm is not on a path of " + length() + " mm; give 0 to its length.");
        }
        int i = Arrays.binarySearch(ends, alongMm);
        // Found exactly: the stroke that begins there. Not found: binarySearch tells the stroke it lies in.
        int stroke = i >= 0 ? i + 1 : -i - 1;
        return Math.min(stroke, ends.length - 1);
    }

    /**
     * A part of the path.
     *
     * @param fromMm its start, inclusive
     * @param toMm its end, inclusive; not before the start
     * @return the points from one to the other; one stroke of no length if both are the same place
     * @throws GeometryException if a place is not on the path or the order is wrong
     */
    public Path part(double fromMm, double toMm) {
        if (!(fromMm <= toMm)) {
            throw new GeometryException("A part from " + fromMm + " mm to " + toMm + " mm runs backwards.");
        }
        double whole = length();
        if (fromMm <= 0 && toMm >= whole) {
            pointAt(fromMm);
            pointAt(toMm);
            return this;
        }
        int first = strokeAt(fromMm);
        int last = strokeAt(toMm);
        if (last > first && toMm - startOf(last) <= SLIVER_MM) {
            last--; // ends at a corner: no empty stroke behind it
        }
        if (last > first && ends[first] - fromMm <= SLIVER_MM) {
            first++; // begins at a corner: no empty stroke before it
        }
        List<Segment> cut = new ArrayList<>(last - first + 1);
        double[] cutEnds = new double[last - first + 1];
        for (int i = first; i <= last; i++) {
            Segment s = segments.get(i);
            double t0 = i == first ? parameter(i, fromMm) : 0;
            double t1 = i == last ? parameter(i, toMm) : 1;
            cut.add(t0 == 0 && t1 == 1 ? s : s.between(t0, Math.max(t0, t1)));
            cutEnds[i - first] = Math.min(ends[i], Math.max(0, toMm)) - Math.min(whole, Math.max(0, fromMm));
        }
        return new Path(List.copyOf(cut), cutEnds);
    }

    /**
     * The path walked from its end.
     *
     * @return the reversed path
     */
    public Path reversed() {
        List<Segment> back = new ArrayList<>(segments.size());
        for (Segment s : segments) {
            back.add(s.reversed());
        }
        Collections.reverse(back);
        int n = ends.length;
        double[] backEnds = new double[n];
        for (int i = 0; i < n; i++) {
            backEnds[i] = i == n - 1 ? length() : length() - ends[n - 2 - i];
        }
        return new Path(List.copyOf(back), backEnds);
    }

    /**
     * The path after a motion of the paper.
     *
     * @param m the motion
     * @return a congruent path
     */
    public Path moved(Motion m) {
        List<Segment> there = new ArrayList<>(segments.size());
        for (Segment s : segments) {
            there.add(s.moved(m));
        }
        return new Path(List.copyOf(there), ends); // a motion changes no length
    }

    /**
     * This path and then another.
     *
     * @param next begins where this ends
     * @return one path
     * @throws GeometryException if there is a gap
     */
    public Path then(Path next) {
        List<Segment> all = new ArrayList<>(segments.size() + next.segments.size());
        all.addAll(segments);
        all.addAll(next.segments);
        checkJoint(segments.size(), end(), next.start());
        double[] allEnds = Arrays.copyOf(ends, all.size());
        for (int i = 0; i < next.ends.length; i++) {
            allEnds[ends.length + i] = length() + next.ends[i];
        }
        return new Path(List.copyOf(all), allEnds);
    }

    /**
     * The tight upright rectangle around the path.
     *
     * @return bounds, mm
     */
    public Bounds bounds() {
        Bounds box = segments.get(0).bounds();
        for (Segment s : segments) {
            box = box.with(s.bounds());
        }
        return box;
    }

    /**
     * The area enclosed, the end being joined straight to the start. Exact for lines and cubics.
     *
     * @return mm², positive if walked anticlockwise
     */
    public double signedArea() {
        double sum = new Line(/* start= */ end(), /* end= */ start()).areaTerm();
        for (Segment s : segments) {
            sum += s.areaTerm();
        }
        return sum;
    }

    /**
     * The place of the path nearest to a point.
     *
     * @param p the point
     * @return the place; of two equally near, the first
     */
    public PathPlace nearest(Point p) {
        return Nearest.on(this, p);
    }

    /**
     * Where the path crosses or touches a straight line without ends.
     *
     * @param through a point of the line
     * @param direction its direction
     * @return places in order along the path, each once
     */
    public List<PathPlace> crossings(Point through, Vec direction) {
        List<PathPlace> found = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            Segment s = segments.get(i);
            for (double t : s.crossings(through, direction)) {
                double along = startOf(i) + s.lengthTo(t);
                if (found.isEmpty() || along - found.get(found.size() - 1).alongMm() > CHAIN_MM) {
                    found.add(new PathPlace(along, s.at(t)));
                }
            }
        }
        return List.copyOf(found);
    }

    /**
     * Where the path first meets a level: the first crossing with the line across the grain at a height.
     *
     * @param y the level, mm
     * @return the place, or nothing if the path does not reach the level
     */
    public Optional<PathPlace> atLevel(double y) {
        List<PathPlace> found = crossings(new Point(0, y), new Vec(1, 0));
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
    }

    /**
     * The path as a chain of points, no farther from it than the tolerance.
     *
     * @param toleranceMm greatest distance between path and chords, mm, above 0
     * @return points from start to end; straight strokes give their ends only
     */
    public List<Point> flattened(double toleranceMm) {
        return Flattening.of(this, toleranceMm);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Path p && segments.equals(p.segments);
    }

    @Override
    public int hashCode() {
        return segments.hashCode();
    }

    /**
     * The path as SVG path data, absolute commands M, L and C.
     *
     * @return text that reads back to the same numbers
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        text.append('M').append(start().x()).append(' ').append(start().y());
        for (Segment s : segments) {
            if (s instanceof Cubic c) {
                text.append(" C")
                        .append(c.handle1().x())
                        .append(' ')
                        .append(c.handle1().y())
                        .append(' ')
                        .append(c.handle2().x())
                        .append(' ')
                        .append(c.handle2().y())
                        .append(' ');
            } else {
                text.append(" L");
            }
            text.append(s.end().x()).append(' ').append(s.end().y());
        }
        return text.toString();
    }
}
