package trueseam.geometry.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.buffer.OffsetCurve;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;

/**
 * New lines beside chords, for shapes too tangled for {@link OffsetChain}: a strip of paper is laid beside each chord and a
 * wedge at each outer corner; what piece and strips cover together has the new outline. Strips inwards are cut away
 * instead. Straight strokes only.
 */
final class ChordOffset {

    /** Strips narrower or shorter than this cover nothing. */
    private static final double SPECK_MM = 1e-7;

    /** The strip beside a shorter chord encloses less than {@link Region} takes for an area. */
    private static final double SHORTEST_CHORD_MM = 3 * Path.CHAIN_MM;

    /** The last chord of a curve: its strip sticks out by a few thousandths of a millimetre. */
    private static final double LEAD_MM = 0.015;

    /** Each chord towards an end is so much shorter: its strip then ends before the curve does. */
    private static final double LEAD_GROWS = 3;

    private ChordOffset() {}

    /** A chord of the source with the distance to its right. */
    private record Chord(Point from, Point to, double distanceMm) {

        Vec along() {
            return to.minus(from).unit();
        }

        Vec aside() {
            return along().right().times(distanceMm);
        }
    }

    static Path closed(Path piece, List<Margin> margins, double mitreLimit, double toleranceMm) {
        double fine = toleranceMm / 2;
        Region area = Region.within(piece, fine);
        boolean anticlockwise = piece.signedArea() > 0;
        List<Path> added = new ArrayList<>();
        List<Path> removed = new ArrayList<>();
        List<Chord> chords = chords(margins, fine);
        for (int i = 0; i < chords.size(); i++) {
            Chord c = chords.get(i);
            Chord next = chords.get((i + 1) % chords.size());
            if (Math.abs(c.distanceMm()) > SPECK_MM) {
                Vec aside = c.aside();
                (c.distanceMm() > 0 == anticlockwise ? added : removed)
                        .add(ring(c.from(), c.from().plus(aside), c.to().plus(aside), c.to()));
            }
            boolean sameSide = c.distanceMm() * next.distanceMm() >= 0;
            double turn = c.along().cross(next.along());
            boolean outerCorner = (c.distanceMm() + next.distanceMm()) * turn > 0;
            if (sameSide && outerCorner) {
                boolean outwards = c.distanceMm() + next.distanceMm() > 0 == anticlockwise;
                wedge(c, next, mitreLimit, outwards ? added : removed);
            }
        }
        Region result = added.isEmpty() ? area : area.union(Region.withinAny(added, fine));
        if (!removed.isEmpty()) {
            result = result.difference(Region.withinAny(removed, fine));
        }
        Path outline = onlyOutline(result, piece, toleranceMm);
        return anticlockwise ? outline : outline.reversed();
    }

    private static List<Chord> chords(List<Margin> margins, double fineMm) {
        List<Chord> chords = new ArrayList<>();
        for (Margin m : margins) {
            List<Point> points = chain(m.line(), fineMm);
            Point from = points.get(0);
            for (Point to : points.subList(1, points.size())) {
                if (!from.isNear(to, SHORTEST_CHORD_MM)) {
                    chords.add(new Chord(from, to, m.distanceMm()));
                    from = to;
                }
            }
        }
        return chords;
    }

    /**
     * The chain of a line, its chords shorter and shorter towards the ends of each curve: a strip lies across its chord, and beside a corner
     * or a fold a long chord's strip would stick out by its lean, a third of a millimetre and more.
     */
    private static List<Point> chain(Path line, double fineMm) {
        List<Point> all = new ArrayList<>(List.of(line.start()));
        for (Segment s : line.segments()) {
            Path curve = Path.of(s);
            List<Point> points = curve.flattened(fineMm);
            int last = points.size() - 1;
            if (s instanceof Cubic) {
                double first = points.get(0).distanceTo(points.get(1));
                for (double mm = LEAD_MM; mm < first / 2; mm *= LEAD_GROWS) {
                    all.add(curve.pointAt(mm));
                }
            }
            all.addAll(points.subList(1, last));
            if (s instanceof Cubic) {
                List<Point> out = new ArrayList<>();
                double end = points.get(last - 1).distanceTo(points.get(last));
                for (double mm = LEAD_MM; mm < end / 2; mm *= LEAD_GROWS) {
                    out.add(0, curve.pointAt(curve.length() - mm));
                }
                all.addAll(out);
            }
            all.add(s.end());
        }
        return all;
    }

    private static void wedge(Chord c, Chord next, double mitreLimit, List<Path> wedges) {
        Point p = c.to();
        Point end = p.plus(c.aside());
        Point start = p.plus(next.aside());
        double widest = Math.max(Math.abs(c.distanceMm()), Math.abs(next.distanceMm()));
        Corner corner = new Corner(p, end, c.along(), start, next.along(), widest);
        List<Point> ring = new ArrayList<>(List.of(p, end));
        ring.addAll(corner.between(mitreLimit));
        ring.add(start);
        Path wedge = ring(ring.toArray(Point[]::new));
        if (Region.faultOf(wedge, SPECK_MM).isEmpty()) { // none beside a fold, or too thin to matter
            wedges.add(wedge);
        }
    }

    private static Path ring(Point... corners) {
        List<Point> points = new ArrayList<>(List.of(corners));
        points.add(corners[0]);
        return Path.through(points.toArray(Point[]::new));
    }

    private static Path onlyOutline(Region result, Path piece, double toleranceMm) {
        // Holes and crumbs thinner than the tolerance are leavings of the chords.
        double crumb = toleranceMm * piece.length();
        List<Path> outer = new ArrayList<>();
        for (Path p : result.outlines()) {
            if (p.signedArea() > 0) {
                outer.add(p);
            }
        }
        outer.sort(Comparator.comparingDouble(Path::signedArea).reversed());
        if (outer.isEmpty() || outer.get(0).signedArea() <= crumb) {
            throw new GeometryException(
                    "Nothing is left of the piece about " + piece.bounds().centre() + " so far within it; take less.");
        }
        if (outer.size() > 1 && outer.get(1).signedArea() > crumb) {
            throw new GeometryException("The line beside the piece about "
                    + piece.bounds().centre() + " falls into " + outer.size() + " parts; take less.");
        }
        return withoutSlits(outer.get(0), toleranceMm);
    }

    /** Between the piece and a strip beside it a slit may stay open that is no wider than rounding: the line goes in and comes out again. */
    private static Path withoutSlits(Path ring, double toleranceMm) {
        List<Point> points = new ArrayList<>();
        for (Segment s : ring.segments()) {
            points.add(s.start());
        }
        int i = 0;
        int looked = 0;
        while (looked < points.size() && points.size() > 3) {
            Point before = points.get(Math.floorMod(i - 1, points.size()));
            Point here = points.get(i % points.size());
            Point after = points.get((i + 1) % points.size());
            if (turnsBack(before, here, after, toleranceMm)) {
                points.remove(i % points.size());
                i = Math.floorMod(i - 2, points.size());
                looked = 0;
            } else {
                i = (i + 1) % points.size();
                looked++;
            }
        }
        return ring(points.toArray(Point[]::new));
    }

    private static boolean turnsBack(Point before, Point here, Point after, double toleranceMm) {
        Vec in = here.minus(before);
        Vec out = after.minus(here);
        double shorter = Math.min(in.length(), out.length());
        return shorter <= SPECK_MM
                || (in.dot(out) < 0
                        && Math.abs(in.cross(out)) <= toleranceMm / 2 * Math.max(in.length(), out.length()));
    }

    /** The line beside an open path, to the right. */
    static Path open(Path path, double distanceMm, double mitreLimit, double toleranceMm) {
        // At a cusp two rows of chords cross at a sharp angle: measured, the place is off by up to twenty chord errors.
        Coordinate[] chords = path.flattened(toleranceMm / 20).stream()
                .map(p -> new Coordinate(p.x(), p.y()))
                .toArray(Coordinate[]::new);
        BufferParameters corners = new BufferParameters();
        corners.setJoinStyle(BufferParameters.JOIN_MITRE);
        corners.setMitreLimit(mitreLimit);
        corners.setSimplifyFactor(toleranceMm / (20 * Math.abs(distanceMm)));
        Geometry line =
                new OffsetCurve(new GeometryFactory().createLineString(chords), -distanceMm, corners).getCurve();
        if (!(line instanceof LineString) || line.isEmpty()) {
            throw new GeometryException("The line " + distanceMm + " mm beside the path from " + path.start() + " to "
                    + path.end() + " falls into parts or vanishes; take less.");
        }
        Point[] points = new Point[line.getNumPoints()];
        for (int i = 0; i < points.length; i++) {
            Coordinate c = line.getCoordinates()[i];
            points[i] = new Point(c.getX(), c.getY());
        }
        return Path.through(points);
    }
}
