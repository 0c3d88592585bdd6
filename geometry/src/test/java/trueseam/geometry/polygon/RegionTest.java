package trueseam.geometry.polygon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

class RegionTest {

    private static Path square(double x, double y, double side) {
        Point a = new Point(x, y);
        return Path.through(a, new Point(x + side, y), new Point(x + side, y + side), new Point(x, y + side), a);
    }

    @Test
    void twoSquaresThatOverlapByAQuarter() {
        Region a = Region.within(square(0, 0, 10), 0.01);
        Region b = Region.within(square(5, 5, 10).reversed(), 0.01);
        assertThat(a.intersection(b).areaMm2()).isCloseTo(25, within(1e-9));
        assertThat(a.union(b).areaMm2()).isCloseTo(175, within(1e-9));
        assertThat(a.difference(b).areaMm2()).isCloseTo(75, within(1e-9));
        assertThat(a.symmetricDifference(b).areaMm2()).isCloseTo(150, within(1e-9));
        assertThat(a.intersection(Region.within(square(20, 0, 1), 0.01)).isEmpty())
                .isTrue();
        assertThat(a.contains(new Point(10, 4))).isTrue();
        assertThat(a.contains(new Point(10.001, 4))).isFalse();
    }

    /** A notched bar overlaps the square with one tooth and touches it with its other, lower tooth. */
    @Test
    void areasThatAlsoTouchAlongALineKeepOnlyTheCommonArea() {
        Region square = Region.within(square(0, 0, 10), 0.01);
        Path bar = Path.through(
                new Point(0, 8),
                new Point(4, 8),
                new Point(4, 12),
                new Point(6, 12),
                new Point(6, 10),
                new Point(10, 10),
                new Point(10, 15),
                new Point(0, 15),
                new Point(0, 8));
        Region common = square.intersection(Region.within(bar, 0.01));
        assertThat(common.areaMm2()).isCloseTo(8, within(1e-9));
        // What was in common goes on being an area that others can be laid over.
        assertThat(common.union(Region.within(square(5, 5, 2), 0.01)).areaMm2()).isCloseTo(12, within(1e-9));
        Region touching = square.intersection(Region.within(square(10, 0, 10), 0.01));
        assertThat(touching.isEmpty()).isTrue();
        assertThat(touching.union(square).areaMm2()).isCloseTo(100, within(1e-9));
    }

    @Test
    void aHoleComesBackClockwiseAfterItsOutline() {
        Region ring = Region.within(square(0, 0, 10), 0.01).difference(Region.within(square(4, 4, 2), 0.01));
        List<Path> outlines = ring.outlines();
        assertThat(outlines).hasSize(2);
        assertThat(outlines.get(0).signedArea()).isCloseTo(100, within(1e-9));
        assertThat(outlines.get(1).signedArea()).isCloseTo(-4, within(1e-9));
        assertThat(outlines).allMatch(Path::isClosed);
        assertThat(ring.contains(new Point(5, 5))).isFalse();
    }

    @Test
    void faultsAreNamedWithTheirPlace() {
        Path bow =
                Path.through(new Point(0, 0), new Point(10, 10), new Point(10, 0), new Point(0, 10), new Point(0, 0));
        OutlineFault fault = Region.faultOf(bow, 0.01).orElseThrow();
        assertThat(fault.kind()).isEqualTo(OutlineFault.Kind.CROSSES_ITSELF);
        assertThat(fault.place().distanceTo(new Point(5, 5))).isCloseTo(0, within(1e-9));
        assertThat(fault.sentence()).isEqualTo("The outline crosses or touches itself at (5.0, 5.0) mm.");
        assertThatThrownBy(() -> Region.within(bow, 0.01)).isInstanceOf(GeometryException.class);
        Path open = Path.through(new Point(0, 0), new Point(10, 10), new Point(10, 0));
        assertThat(Region.faultOf(open, 0.01).orElseThrow().kind()).isEqualTo(OutlineFault.Kind.OPEN);
        Path flat = Path.through(new Point(0, 0), new Point(10, 10), new Point(0, 0));
        assertThat(Region.faultOf(flat, 0.01).orElseThrow().kind()).isEqualTo(OutlineFault.Kind.NO_AREA);
        Path dot = Path.through(new Point(3, 3), new Point(3, 3));
        assertThat(Region.faultOf(dot, 0.01).orElseThrow().kind()).isEqualTo(OutlineFault.Kind.NO_AREA);
        assertThat(Region.faultOf(square(0, 0, 10), 0.01)).isEmpty();
    }

    static IntStream seeds() {
        return IntStream.range(0, 100);
    }

    /** A star-shaped outline of smooth curves about a point, with corners: never crosses itself. */
    private static Path blob(Random random, Point centre) {
        int n = 3 + random.nextInt(6);
        Point[] corner = new Point[n];
        for (int i = 0; i < n; i++) {
            corner[i] = centre.plus(Vec.atAngle(2 * Math.PI * i / n).times(60 + 60 * random.nextDouble()));
        }
        List<Segment> strokes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point a = corner[i];
            Point b = corner[(i + 1) % n];
            Vec chord = b.minus(a);
            double bulge = 0.5 * random.nextDouble() - 0.2;
            strokes.add(Joining.smooth(a, chord.turned(-bulge), b, chord.turned(bulge)));
        }
        return Path.of(strokes);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void booleansAgreeWithJavaAwtArea(int seed) {
        Random random = new Random(seed);
        Path a = blob(random, Point.ORIGIN);
        Path b = blob(random, new Point(80 * random.nextDouble(), 60 * random.nextDouble()));
        Region ra = Region.within(a, 1e-4);
        Region rb = Region.within(b, 1e-4);
        // Oracle: java.awt.geom.Area, which keeps the cubics. Both sides flatten to 1e-4 mm outlines of under 1 m.
        assertThat(ra.intersection(rb).areaMm2()).isCloseTo(awt(a, b, Area::intersect), within(0.1));
        assertThat(ra.union(rb).areaMm2()).isCloseTo(awt(a, b, Area::add), within(0.1));
        assertThat(ra.difference(rb).areaMm2()).isCloseTo(awt(a, b, Area::subtract), within(0.1));
        // Chords within 1e-4 mm of an outline of under 1 m enclose its area to within 0.1 mm².
        assertThat(ra.areaMm2()).isCloseTo(a.signedArea(), within(0.1));
    }

    private interface Operation {
        void apply(Area a, Area b);
    }

    private static double awt(Path a, Path b, Operation operation) {
        Area area = area(a);
        operation.apply(area, area(b));
        double sum = 0;
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator i = new FlatteningPathIterator(area.getPathIterator(null), 1e-4, 16); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            if (kind == PathIterator.SEG_LINETO) {
                sum += (x * c[1] - c[0] * y) / 2;
            }
            if (kind == PathIterator.SEG_MOVETO || kind == PathIterator.SEG_LINETO) {
                x = c[0];
                y = c[1];
            }
        }
        return Math.abs(sum);
    }

    private static Area area(Path path) {
        Path2D.Double shape = new Path2D.Double();
        shape.moveTo(path.start().x(), path.start().y());
        for (Segment s : path.segments()) {
            Cubic c = (Cubic) s;
            shape.curveTo(
                    c.handle1().x(),
                    c.handle1().y(),
                    c.handle2().x(),
                    c.handle2().y(),
                    c.end().x(),
                    c.end().y());
        }
        shape.closePath();
        return new Area(shape);
    }
}
