package trueseam.geometry.crossing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import trueseam.geometry.Cubic;
import trueseam.geometry.Drawn;
import trueseam.geometry.Line;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

/** Laws of crossings over seeded shapes; the seed is in the name of a failing case. */
class CrossingLawsTest {

    private static final Duration HANG = Duration.ofSeconds(20);

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    private static Path wander(Random random) {
        List<Segment> strokes = new ArrayList<>();
        Point at = Drawn.anywhere(random, 300);
        for (int i = 0; i < 4; i++) {
            Point to = Drawn.anywhere(random, 300);
            strokes.add(
                    random.nextInt(3) == 0
                            ? new Line(at, to)
                            : new Cubic(at, Drawn.anywhere(random, 400), Drawn.anywhere(random, 400), to));
            at = to;
        }
        return Path.of(strokes);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void placesLieOnBothPathsAndAgreeWithJtsOnFineFlattenings(int seed) {
        Random random = new Random(seed);
        Path a = wander(random);
        Path b = wander(random);
        List<Crossing> found = Crossings.between(a, b);
        for (Crossing c : found) {
            assertThat(c.onFirst().point().distanceTo(c.onSecond().point())).isCloseTo(0, within(1e-9));
            assertThat(a.pointAt(c.onFirst().alongMm()).distanceTo(c.onFirst().point()))
                    .isCloseTo(0, within(1e-9));
            assertThat(b.pointAt(c.onSecond().alongMm()).distanceTo(c.onSecond().point()))
                    .isCloseTo(0, within(1e-9));
        }
        // Oracle: JTS on chords within 1e-6 mm.
        Geometry points = jts(a).intersection(jts(b));
        assertThat(found).hasSize(points.getNumPoints());
        for (Coordinate q : points.getCoordinates()) {
            Point p = new Point(q.getX(), q.getY());
            assertThat(found).anyMatch(c -> c.onFirst().point().isNear(p, 1e-3));
        }
    }

    private static Geometry jts(Path path) {
        Coordinate[] all = path.flattened(1e-6).stream()
                .map(p -> new Coordinate(p.x(), p.y()))
                .toArray(Coordinate[]::new);
        return new GeometryFactory().createLineString(all);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void orderOfThePathsAndMotionChangeNothing(int seed) {
        Random random = new Random(seed);
        Path a = wander(random);
        Path b = wander(random);
        List<Crossing> found = Crossings.between(a, b);
        assertThat(Crossings.between(b, a)).hasSameSizeAs(found);
        Motion m = Motion.pivot(new Point(30, 10), 2 * random.nextDouble()).then(Motion.slide(new Vec(100, -3)));
        List<Crossing> moved = Crossings.between(a.moved(m), b.moved(m));
        assertThat(moved).hasSameSizeAs(found);
        for (int i = 0; i < found.size(); i++) {
            assertThat(moved.get(i).onFirst().alongMm())
                    .isCloseTo(found.get(i).onFirst().alongMm(), within(1e-7));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPathAndItsPartsShareThePart(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        double t = 0.1 + 0.4 * random.nextDouble();
        Path part = Path.of(c.between(t, t + 0.3));
        List<Crossing> found = assertTimeoutPreemptively(HANG, () -> Crossings.between(part, Path.of(c)));
        assertThat(found).hasSize(2);
        assertThat(found.get(0).kind()).isEqualTo(Crossing.Kind.SHARED_FROM);
        assertThat(found.get(1).onFirst().alongMm()).isCloseTo(part.length(), within(1e-6));
    }

    /** One curve beside another, nearer and nearer: whatever comes back, it comes back. */
    @ParameterizedTest
    @MethodSource("seeds")
    void nearlyEqualCurvesNeverHang(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        double shift = Math.pow(10, -3 - 10 * random.nextDouble());
        Cubic beside = new Cubic(
                c.start().plus(new Vec(shift, 0)),
                c.handle1().plus(new Vec(-shift, shift)),
                c.handle2().plus(new Vec(0, shift * random.nextDouble())),
                c.end().plus(new Vec(-shift, -shift)));
        assertTimeoutPreemptively(HANG, () -> {
            try {
                for (Crossing x : Crossings.between(Path.of(c), Path.of(beside))) {
                    assertThat(x.onFirst().point().distanceTo(x.onSecond().point()))
                            .isLessThanOrEqualTo(2.1e-9);
                }
            } catch (trueseam.geometry.GeometryException refused) {
                assertThat(refused).hasMessageContaining("too nearly");
            }
        });
    }
}
