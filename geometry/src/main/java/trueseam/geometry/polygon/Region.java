package trueseam.geometry.polygon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.crossing.Crossings;

/**
 * An area of paper: what lies within one or more outlines. Immutable.
 *
 * <p>Laws: (1) area(A or B) + area(A and B) = area(A) + area(B); (2) area(A less B) = area(A) - area(A and B), both to
 * rounding.
 */
public final class Region {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Geometry area;

    private Region(Geometry area) {
        this.area = area;
    }

    /**
     * What keeps a path from being an outline, judged on the curves themselves.
     *
     * @param outline the path
     * @return the first fault along the path, or nothing for a simple closed outline
     */
    public static Optional<OutlineFault> faultOf(Path outline) {
        if (!outline.isClosed()) {
            return Optional.of(new OutlineFault(OutlineFault.Kind.OPEN, outline.end()));
        }
        if (!(Math.abs(outline.signedArea()) > Path.CHAIN_MM * outline.length())) {
            return Optional.of(new OutlineFault(OutlineFault.Kind.NO_AREA, outline.start()));
        }
        return Crossings.ofItself(outline).stream()
                .findFirst()
                .map(c -> new OutlineFault(
                        OutlineFault.Kind.CROSSES_ITSELF, c.onFirst().point()));
    }

    /**
     * What keeps the chords of a path from being an outline.
     *
     * @param outline the path
     * @param toleranceMm how far the chords looked at may lie from the path, mm
     * @return the first fault found, or nothing for a simple closed outline
     */
    public static Optional<OutlineFault> faultOf(Path outline, double toleranceMm) {
        if (!outline.isClosed()) {
            return Optional.of(new OutlineFault(OutlineFault.Kind.OPEN, outline.end()));
        }
        Coordinate[] ring = ring(outline, toleranceMm);
        if (ring.length < 4) {
            return Optional.of(new OutlineFault(OutlineFault.Kind.NO_AREA, outline.start()));
        }
        TopologyValidationError error = new IsValidOp(FACTORY.createPolygon(ring)).getValidationError();
        if (error == null) {
            return Optional.empty();
        }
        OutlineFault.Kind kind = error.getErrorType() == TopologyValidationError.TOO_FEW_POINTS
                ? OutlineFault.Kind.NO_AREA
                : OutlineFault.Kind.CROSSES_ITSELF;
        return Optional.of(new OutlineFault(kind, point(error.getCoordinate())));
    }

    /**
     * The area within an outline.
     *
     * @param outline a simple closed path, walked either way
     * @param toleranceMm how far the chords may lie from the path, mm
     * @return the area
     * @throws GeometryException if the path has a fault, which the message says
     */
    public static Region within(Path outline, double toleranceMm) {
        Optional<OutlineFault> fault = faultOf(outline, toleranceMm);
        if (fault.isPresent()) {
            throw new GeometryException(fault.get().sentence() + " Only a simple closed outline has an inside.");
        }
        return new Region(FACTORY.createPolygon(ring(outline, toleranceMm)));
    }

    /**
     * The area within any of several outlines.
     *
     * @param outlines simple closed paths
     * @param toleranceMm how far the chords may lie from the paths, mm
     * @return all together
     * @throws GeometryException if a path has a fault
     */
    public static Region withinAny(List<Path> outlines, double toleranceMm) {
        List<Geometry> areas = new ArrayList<>(outlines.size());
        for (Path outline : outlines) {
            areas.add(within(outline, toleranceMm).area);
        }
        return new Region(OverlayNGRobust.union(areas, FACTORY));
    }

    private static Coordinate[] ring(Path outline, double toleranceMm) {
        List<Point> points = outline.flattened(toleranceMm);
        List<Coordinate> ring = new ArrayList<>(points.size());
        for (Point p : points) {
            Coordinate c = new Coordinate(p.x(), p.y());
            if (ring.isEmpty() || !ring.get(ring.size() - 1).equals2D(c, Path.CHAIN_MM)) {
                ring.add(c);
            }
        }
        // The path is closed to within CHAIN_MM; the ring must be closed to the last digit.
        ring.set(ring.size() - 1, ring.get(0).copy());
        return ring.toArray(Coordinate[]::new);
    }

    private static Point point(Coordinate c) {
        return new Point(c.getX(), c.getY());
    }

    /**
     * What lies in either.
     *
     * @param other the other area
     * @return both together
     */
    public Region union(Region other) {
        return overlay(other, OverlayNG.UNION);
    }

    /**
     * What lies in both.
     *
     * @param other the other area
     * @return the common part, which may be empty
     */
    public Region intersection(Region other) {
        return overlay(other, OverlayNG.INTERSECTION);
    }

    /**
     * What lies in this and not in the other.
     *
     * @param other the other area
     * @return this less the other, which may be empty
     */
    public Region difference(Region other) {
        return overlay(other, OverlayNG.DIFFERENCE);
    }

    /**
     * What lies in one of the two only.
     *
     * @param other the other area
     * @return where they differ, which may be empty
     */
    public Region symmetricDifference(Region other) {
        return overlay(other, OverlayNG.SYMDIFFERENCE);
    }

    /**
     * This and all that lies near it, corners rounded.
     *
     * @param marginMm how near, mm, not negative
     * @return the larger area
     */
    public Region grown(double marginMm) {
        if (!(marginMm >= 0)) {
            throw new IllegalArgumentException("marginMm is negative: " + marginMm);
        }
        return new Region(area.buffer(marginMm));
    }

    /** Areas that only touch along a line or at a point have nothing in common: lines and points are left out. */
    private Region overlay(Region other, int operation) {
        Geometry found = OverlayNGRobust.overlay(area, other.area, operation);
        if (found instanceof Polygon || found instanceof MultiPolygon) {
            return new Region(found);
        }
        List<Polygon> areas = new ArrayList<>();
        for (int i = 0; i < found.getNumGeometries(); i++) {
            if (found.getGeometryN(i) instanceof Polygon polygon) {
                areas.add(polygon);
            }
        }
        return new Region(FACTORY.createMultiPolygon(areas.toArray(Polygon[]::new)));
    }

    /**
     * How large it is.
     *
     * @return mm², holes not counted
     */
    public double areaMm2() {
        return area.getArea();
    }

    /**
     * Whether there is nothing in it.
     *
     * @return true if it has no area
     */
    public boolean isEmpty() {
        return !(area.getArea() > 0);
    }

    /**
     * Whether a point lies in it or on its outline.
     *
     * @param p the point
     * @return true if inside or on the outline
     */
    public boolean contains(Point p) {
        int where = new IndexedPointInAreaLocator(area).locate(new Coordinate(p.x(), p.y()));
        return where != Location.EXTERIOR;
    }

    /**
     * The outlines, straight strokes only.
     *
     * @return closed paths: each outer outline anticlockwise, followed by its holes clockwise; empty if the region is
     */
    public List<Path> outlines() {
        List<Path> found = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > 0) {
                found.add(path(polygon.getExteriorRing(), true));
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    found.add(path(polygon.getInteriorRingN(k), false));
                }
            }
        }
        return List.copyOf(found);
    }

    private static Path path(LinearRing ring, boolean anticlockwise) {
        Coordinate[] corners = ring.getCoordinates();
        Point[] points = new Point[corners.length];
        for (int i = 0; i < corners.length; i++) {
            points[i] = point(corners[i]);
        }
        Path path = Path.through(points);
        return Orientation.isCCW(corners) == anticlockwise ? path : path.reversed();
    }
}
