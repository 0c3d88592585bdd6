package trueseam.geometry.offset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import trueseam.geometry.Drawn;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;
import trueseam.geometry.polygon.Region;

class OffsetLawsTest {

    private static final double TOLERANCE_MM = 0.01;

    static IntStream seeds() {
        return IntStream.range(0, 150);
    }

    /** A star-shaped piece with corners, some edges straight, some curved, one with an S. */
    private static Path piece(Random random) {
        int n = 4 + random.nextInt(5);
        Point[] corner = new Point[n];
        for (int i = 0; i < n; i++) {
            corner[i] = Point.ORIGIN.plus(Vec.atAngle(2 * Math.PI * (i + 0.3 * random.nextDouble()) / n)
                    .times(200 + 200 * random.nextDouble()));
        }
        List<Segment> strokes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point a = corner[i];
            Point b = corner[(i + 1) % n];
            Vec chord = b.minus(a);
            double out = 0.5 * random.nextDouble() - 0.25;
            double in = 0.5 * random.nextDouble() - 0.25;
            strokes.add(
                    random.nextInt(3) == 0
                            ? new Line(a, b)
                            : Joining.smooth(a, chord.turned(out), b, chord.turned(in)));
        }
        return Path.of(strokes);
    }

    /** A closed smooth line: through points round a centre, tangent to the chords of their neighbours. */
    private static Path smoothPiece(Random random) {
        int n = 5 + random.nextInt(5);
        Point[] p = new Point[n];
        for (int i = 0; i < n; i++) {
            p[i] = Point.ORIGIN.plus(Vec.atAngle(2 * Math.PI * i / n).times(100 + 60 * random.nextDouble()));
        }
        List<Segment> strokes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Vec out = p[(i + 1) % n].minus(p[(i + n - 1) % n]);
            Vec in = p[(i + 2) % n].minus(p[i]);
            strokes.add(Joining.smooth(p[i], out, p[(i + 1) % n], in));
        }
        return Path.of(strokes);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPieceGrownOrNarrowedIsTheMitredBufferOfJts(int seed) {
        Random random = new Random(seed);
        Path piece = piece(random);
        double distance = (random.nextBoolean() ? 1 : -1) * (3 + 27 * random.nextDouble());
        assertIsBuffer(piece, distance);
    }

    /** Radii of curvature below the distance, narrow mouths, and inner corners close together. */
    @ParameterizedTest
    @MethodSource("seeds")
    void cuspsAndNarrowMouthsLeaveNoLoops(int seed) {
        Random random = new Random(seed);
        double w = 5 + 40 * random.nextDouble();
        double d = 20 + 60 * random.nextDouble();
        double s = 40 * random.nextDouble() - 20;
        Path mouth = Drawn.path("M 0 0 L 100 0 C 100 " + d + " " + (100 + w) + " " + (d + s) + " " + (100 + w)
                + " 0 L 250 0 C 260 60 190 90 250 160 C 150 110 100 130 0 150 Z");
        double distance = (random.nextInt(4) == 0 ? -1 : 1) * (3 + 20 * random.nextDouble());
        assertIsBuffer(mouth, distance);
    }

    private static void assertIsBuffer(Path piece, double distance) {
        Geometry fine = jts(piece.flattened(0.001));
        BufferParameters mitred = new BufferParameters();
        mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
        mitred.setMitreLimit(Offset.MITRE_LIMIT);
        mitred.setSimplifyFactor(1e-5);
        Geometry buffer = BufferOp.bufferOp(fine, distance, mitred);
        if (buffer.getNumGeometries() != 1) {
            return; // falls apart: see OffsetTest
        }
        Path ours = Offset.of(piece, distance, TOLERANCE_MM);
        assertThat(ours.isClosed()).isTrue();
        assertThat(Region.faultOf(ours)).isEmpty();
        Geometry apart =
                OverlayNGRobust.overlay(jts(ours.flattened(0.001)), outer((Polygon) buffer), OverlayNG.SYMDIFFERENCE);
        // A band as wide as both tolerances along the whole line.
        assertThat(apart.getArea()).isLessThan(2 * TOLERANCE_MM * ours.length());
    }

    private static Geometry outer(Geometry polygon) {
        return new GeometryFactory()
                .createPolygon(((org.locationtech.jts.geom.Polygon) polygon)
                        .getExteriorRing()
                        .getCoordinates());
    }

    private static Geometry jts(List<Point> points) {
        List<Coordinate> ring = new ArrayList<>();
        for (Point p : points) {
            ring.add(new Coordinate(p.x(), p.y()));
        }
        ring.set(ring.size() - 1, ring.get(0).copy());
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPointBesideASmoothLineHasTheDistance(int seed) {
        Random random = new Random(seed);
        Path line = smoothPiece(random);
        double distance = 3 + 12 * random.nextDouble();
        Path beside = Offset.of(line, distance, TOLERANCE_MM);
        for (int i = 0; i <= 500; i++) {
            Point p = beside.pointAt(beside.length() * i / 500);
            assertThat(line.nearest(p).point().distanceTo(p)).isCloseTo(distance, within(TOLERANCE_MM));
        }
        // Steiner: a convex or concave smooth closed line changes by exactly 2 pi d in length and by d L + pi d² in
        // area.
        assertThat(beside.length()).isCloseTo(line.length() + 2 * Math.PI * distance, within(0.1));
        assertThat(beside.signedArea())
                .isCloseTo(
                        line.signedArea() + distance * line.length() + Math.PI * distance * distance,
                        within(TOLERANCE_MM * line.length()));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void besideAnOpenCurveNoPointIsNearerThanTheDistance(int seed) {
        Random random = new Random(seed);
        Vec chord = Vec.atAngle(7 * random.nextDouble()).times(40 + 400 * random.nextDouble());
        Vec out = chord.turned(3 * random.nextDouble() - 1.5);
        Vec in = chord.turned(3 * random.nextDouble() - 1.5);
        Path line = Path.of(Joining.smooth(Point.ORIGIN, out, Point.ORIGIN.plus(chord), in));
        double distance = (random.nextBoolean() ? 1 : -1) * (2 + 20 * random.nextDouble());
        Path beside;
        try {
            beside = Offset.of(line, distance, TOLERANCE_MM);
        } catch (GeometryException refused) {
            assertThat(refused).hasMessageContaining("falls into parts");
            return;
        }
        for (int i = 0; i <= 200; i++) {
            Point p = beside.pointAt(beside.length() * i / 200);
            double end = i < 4 || 196 < i ? 0.01 * Math.abs(distance) : 0; // documented in Offset
            assertThat(line.nearest(p).point().distanceTo(p)).isGreaterThan(Math.abs(distance) - TOLERANCE_MM - end);
        }
        Vec aside = line.startTangent().right().times(distance);
        if (beside.start().isNear(line.start().plus(aside), 1e-6)) {
            assertThat(beside.startTangent().dot(line.startTangent())).isGreaterThan(0.999);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void eachEdgeKeepsItsOwnDistance(int seed) {
        Random random = new Random(seed);
        Path piece = piece(random);
        double[] wide = {0, 6, 10, 15, 15.875, 30};
        List<Margin> margins = new ArrayList<>();
        for (Segment s : piece.segments()) {
            margins.add(new Margin(Path.of(s), wide[random.nextInt(wide.length)]));
        }
        Path cut = Offset.outline(margins, TOLERANCE_MM);
        assertThat(Region.faultOf(cut)).isEmpty();
        Region inside = Region.within(cut, 0.001);
        int checked = 0;
        for (Margin m : margins) {
            for (int i = 1; i < 20; i++) {
                double along = m.line().length() * i / 20;
                Vec out = m.line().tangentAt(along).right();
                Point p = m.line().pointAt(along);
                double fromCorner = Math.min(along, m.line().length() - along);
                // Nearer to a corner a neighbour's fold, or a neighbour drawn on, may cut the line short.
                // So may a neighbour's wider allowance that reaches over in a narrow inner corner.
                Point beyond = p.plus(out.times(m.distanceMm() + 2 * TOLERANCE_MM));
                boolean alone = margins.stream()
                        .noneMatch(o -> !o.equals(m)
                                && o.line().nearest(beyond).point().distanceTo(beyond) < o.distanceMm() + TOLERANCE_MM);
                if (alone && fromCorner > Offset.MITRE_LIMIT * 30) {
                    assertThat(inside.contains(p.plus(out.times(m.distanceMm() - 2 * TOLERANCE_MM))))
                            .isTrue();
                    assertThat(inside.contains(p.plus(out.times(m.distanceMm() + 2 * TOLERANCE_MM))))
                            .isFalse();
                    checked++;
                }
            }
        }
        assertThat(checked).isPositive();
    }
}
