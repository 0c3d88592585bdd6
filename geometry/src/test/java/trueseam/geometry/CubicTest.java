package trueseam.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;

class CubicTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    private static boolean isSame(Point p, Point q) {
        return p.isNear(q, 1e-9);
    }

    @Test
    void fourCubicsMakeACircleWithTheKnownError() {
        // Closed form: with handle 4/3 (sqrt(2) - 1) the greatest radius is 1 + 2.7253e-4 (M. Goldapp, 1991).
        double k = 4.0 / 3 * (Math.sqrt(2) - 1) * 100;
        Cubic quarter = new Cubic(new Point(100, 0), new Point(100, k), new Point(k, 100), new Point(0, 100));
        double greatest = 0;
        for (int i = 0; i <= 1000; i++) {
            greatest = Math.max(greatest, quarter.at(i / 1000.0).distanceTo(Point.ORIGIN));
        }
        assertThat(greatest).isCloseTo(100 * (1 + 2.7253e-4), within(1e-4));
        assertThat(quarter.length()).isCloseTo(50 * Math.PI, within(100 * 2.8e-4));
        assertThat(quarter.curvature(0.5)).isCloseTo(0.01, within(1e-4));
        // Exact, integrated by hand: r² (10 + 12 h - 3 h²) / 20 with h = k / r.
        double h = k / 100;
        assertThat(quarter.areaTerm()).isCloseTo(500 * (10 + 12 * h - 3 * h * h), within(1e-9));
        assertThat(quarter.areaTerm()).isCloseTo(2500 * Math.PI, within(2500 * Math.PI * 4e-4));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void thePartsOfASplitAreTheCurve(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        double t = random.nextDouble();
        Cubic first = c.between(0, t);
        Cubic second = c.between(t, 1);
        assertThat(isSame(first.end(), second.start())).isTrue();
        assertThat(first.length() + second.length()).isCloseTo(c.length(), within(1e-9));
        double u = random.nextDouble();
        assertThat(isSame(first.at(u), c.at(t * u))).isTrue();
        assertThat(isSame(second.at(u), c.at(t + (1 - t) * u))).isTrue();
        // Joined again: the first part run on to the whole parameter is the curve.
        Cubic joined = first.between(0, 1 / t);
        assertThat(joined.end().distanceTo(c.end())).isLessThan(1e-9 / (t * t * t));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void derivativesAgreeWithFiniteDifferences(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        double t = 0.01 + 0.98 * random.nextDouble();
        double h = 1e-4; // a central difference of a cubic errs by h² |third derivative| / 6
        Vec slope = c.at(t + h).minus(c.at(t - h)).times(1 / (2 * h));
        assertThat(c.derivative(t).minus(slope).length()).isLessThan(1e-4);
        Vec bend = c.derivative(t + h).minus(c.derivative(t - h)).times(1 / (2 * h));
        assertThat(c.secondDerivative(t).minus(bend).length()).isLessThan(1e-6);
        double turned = c.derivative(t - h).angleTo(c.derivative(t + h));
        double way = c.lengthTo(t + h) - c.lengthTo(t - h);
        if (c.derivative(t).length() > 10) {
            assertThat(c.curvature(t)).isCloseTo(turned / way, within(1e-3));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void reversingAndMovingKeepLengthAndShape(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        Motion m = Motion.pivot(Drawn.anywhere(random, 500), 6 * random.nextDouble())
                .then(Motion.slide(new Vec(400 * random.nextDouble(), -300)));
        assertThat(c.moved(m).length()).isCloseTo(c.length(), within(1e-9));
        assertThat(isSame(c.moved(m).at(0.37), m.apply(c.at(0.37)))).isTrue();
        assertThat(c.reversed().length()).isCloseTo(c.length(), within(1e-9));
        assertThat(c.reversed().areaTerm()).isCloseTo(-c.areaTerm(), within(1e-9 * 1e5));
        assertThat(c.reversed().reversed()).isEqualTo(c);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theAreaAgreesWithJtsOnAFineFlattening(int seed) {
        Cubic c = Drawn.cubic(new Random(seed));
        Path closed = Path.of(c, new Line(c.end(), c.start()));
        Coordinate[] ring = closed.flattened(1e-5).stream()
                .map(p -> new Coordinate(p.x(), p.y()))
                .toArray(Coordinate[]::new);
        // JTS counts clockwise as positive. Chords within 1e-5 mm of at most 2 m enclose the area to 0.02 mm².
        assertThat(closed.signedArea()).isCloseTo(-Area.ofRingSigned(ring), within(0.02));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theBoundsAreTight(int seed) {
        Cubic c = Drawn.cubic(new Random(seed));
        Bounds box = c.bounds();
        Bounds sampled = Bounds.of(c.start(), c.start());
        for (int i = 0; i <= 5000; i++) {
            sampled = sampled.with(c.at(i / 5000.0));
        }
        assertThat(box.minX()).isBetween(sampled.minX() - 1e-3, sampled.minX() + 1e-12);
        assertThat(box.minY()).isBetween(sampled.minY() - 1e-3, sampled.minY() + 1e-12);
        assertThat(box.maxX()).isBetween(sampled.maxX() - 1e-12, sampled.maxX() + 1e-3);
        assertThat(box.maxY()).isBetween(sampled.maxY() - 1e-12, sampled.maxY() + 1e-3);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void crossingsWithALineAgreeWithTheFlattening(int seed) {
        Random random = new Random(seed);
        Path path = Path.of(Drawn.cubic(random));
        Point p = Drawn.anywhere(random, 100);
        Vec v = Vec.atAngle(7 * random.nextDouble()).times(3);
        List<PathPlace> found = path.crossings(p, v);
        List<Point> chords = path.flattened(1e-5);
        int changes = 0;
        for (int i = 1; i < chords.size(); i++) {
            double before = v.cross(chords.get(i - 1).minus(p));
            double after = v.cross(chords.get(i).minus(p));
            changes += (before < 0) != (after < 0) ? 1 : 0;
        }
        assertThat(found).hasSize(changes);
        for (PathPlace place : found) {
            assertThat(v.unit().cross(place.point().minus(p))).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void theTangentIsKnownWhereHandlesLieOnTheirEnds() {
        Point a = new Point(0, 0);
        Point b = new Point(3, 4);
        Point c = new Point(10, 0);
        assertThat(new Cubic(a, a, b, c).tangent(0).minus(new Vec(0.6, 0.8)).length())
                .isLessThan(1e-12);
        assertThat(new Cubic(c, b, a, a).tangent(1).minus(new Vec(-0.6, -0.8)).length())
                .isLessThan(1e-12);
        assertThat(new Cubic(a, a, c, c).tangent(0)).isEqualTo(new Vec(1, 0));
        assertThat(new Cubic(a, a, c, c).tangent(1)).isEqualTo(new Vec(1, 0));
        assertThat(new Cubic(a, a, a, c).tangent(0)).isEqualTo(new Vec(1, 0));
        assertThatThrownBy(() -> new Cubic(a, a, a, a).tangent(0)).isInstanceOf(GeometryException.class);
    }

    @Test
    void aLoopPassesItsCrossingTwice() {
        Cubic loop = new Cubic(new Point(0, 0), new Point(40, 60), new Point(-30, 60), new Point(10, 0));
        List<Double> twice = loop.selfCrossing();
        assertThat(twice).hasSize(2);
        assertThat(loop.at(twice.get(0)).distanceTo(loop.at(twice.get(1)))).isCloseTo(0, within(1e-12));
        assertThat(twice.get(1) - twice.get(0)).isGreaterThan(0.1);
        assertThat(new Cubic(new Point(0, 0), new Point(0, 50), new Point(50, 50), new Point(50, 0)).selfCrossing())
                .isEmpty();
    }
}
