package trueseam.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArcLengthTest {

    static IntStream seeds() {
        return IntStream.range(0, 500);
    }

    /** Oracle: Hipparchus' adaptive Gauss-Legendre quadrature on thirty-two parts. */
    private static double hipparchus(Cubic c, double t0, double t1) {
        IterativeLegendreGaussIntegrator integrator = new IterativeLegendreGaussIntegrator(16, 1e-14, 1e-14, 1, 60);
        double sum = 0;
        int parts = 32;
        for (int i = 0; i < parts; i++) {
            double from = t0 + (t1 - t0) * i / parts;
            double to = t0 + (t1 - t0) * (i + 1) / parts;
            sum += integrator.integrate(10_000_000, t -> c.derivative(t).length(), from, to);
        }
        return sum;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithHipparchusOnGarmentSizedCurves(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        assertThat(c.length()).isCloseTo(hipparchus(c, 0, 1), within(1e-9));
        double t = random.nextDouble();
        assertThat(c.lengthTo(t)).isCloseTo(hipparchus(c, 0, t), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theParameterAtALengthIsItsInverse(int seed) {
        Random random = new Random(seed);
        Cubic c = seed % 2 == 0 ? Drawn.cubic(random) : edge(random);
        double whole = c.length();
        for (int i = 0; i < 10; i++) {
            double along = whole * random.nextDouble();
            assertThat(c.lengthTo(c.parameterAt(along))).isCloseTo(along, within(1e-10));
        }
        assertThat(c.parameterAt(0)).isZero();
        assertThat(c.parameterAt(whole)).isEqualTo(1);
    }

    /** Bent little, as most edges are; sometimes a handle lies on its end. */
    private static Cubic edge(Random random) {
        double size = 20 + 600 * random.nextDouble();
        double first = random.nextInt(4) == 0 ? 0 : size / 3;
        double last = random.nextInt(4) == 0 ? 0 : size / 3;
        return Cubic.of(
                Point.ORIGIN,
                Vec.atAngle(random.nextDouble() - 0.5).times(first),
                Vec.atAngle(Math.PI + random.nextDouble() - 0.5).times(last),
                new Point(size, 0));
    }

    @Test
    void aParabolaHasItsClosedForm() {
        // y = x² / 100 from 0 to 80; length = x/2 sqrt(1 + 4 a² x²) + asinh(2 a x) / (4 a), a = 1/100.
        double a = 0.01;
        double x = 80;
        double exact = x / 2 * Math.sqrt(1 + 4 * a * a * x * x) + asinh(2 * a * x) / (4 * a);
        Cubic c = new Cubic(
                Point.ORIGIN, new Point(x / 3, 0), new Point(2 * x / 3, a * x * x / 3), new Point(x, a * x * x));
        assertThat(c.length()).isCloseTo(exact, within(1e-11));
    }

    private static double asinh(double v) {
        return Math.log(v + Math.sqrt(v * v + 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 100, 1000})
    void aSemicubicalParabolaHasItsClosedFormAlsoThroughItsCusp(double size) {
        // (t², t³): length from 0 to 1 is (13 sqrt(13) - 8) / 27 (W. Neile, 1657). Its handle lies on its start.
        double exact = size * (13 * Math.sqrt(13) - 8) / 27;
        Cubic half = new Cubic(Point.ORIGIN, Point.ORIGIN, new Point(size / 3, 0), new Point(size, size));
        assertThat(half.length()).isCloseTo(exact, within(1e-9));
        // t from -1 to 1, the cusp in the middle; from -0.3 to 1 off the middle.
        Cubic both = semicubical(size, -1);
        assertThat(both.length()).isCloseTo(2 * exact, within(1e-9));
        double part = size * (Math.pow(4 + 9 * 0.09, 1.5) - 8) / 27;
        assertThat(semicubical(size, -0.3).length()).isCloseTo(part + exact, within(1e-9));
    }

    /** (t², t³) for t from a to 1, by the blossom of each coordinate. */
    private static Cubic semicubical(double size, double a) {
        return new Cubic(
                new Point(size * a * a, size * a * a * a),
                new Point(size * (a * a + 2 * a) / 3, size * a * a),
                new Point(size * (1 + 2 * a) / 3, size * a),
                new Point(size, size));
    }

    /** A handle much shorter than its curve bends sharply beside its end, between the points of any fixed rule. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aVeryShortHandleIsNotMissed(int seed) {
        Random random = new Random(seed);
        double shortest = Math.pow(10, 1 - 8 * random.nextDouble());
        Cubic c = Cubic.of(
                Point.ORIGIN,
                Vec.atAngle(6 * random.nextDouble()).times(shortest),
                Vec.atAngle(3 + random.nextDouble()).times(100),
                new Point(450, 0));
        // Oracle: Hipparchus on parts that shrink towards the sharp end.
        double sum = 0;
        double to = 1;
        for (int i = 0; i < 24; i++) {
            sum += hipparchus(c, to / 3, to);
            to /= 3;
        }
        assertThat(c.length()).isCloseTo(sum + hipparchus(c, 0, to), within(1e-9));
    }

    @Test
    void straightCurvesAreAsLongAsTheirLine() {
        Cubic even = new Cubic(Point.ORIGIN, new Point(1, 1), new Point(2, 2), new Point(3, 3));
        assertThat(even.length()).isCloseTo(Math.sqrt(18), within(1e-14));
        Cubic uneven = new Cubic(Point.ORIGIN, new Point(90, 0), new Point(95, 0), new Point(100, 0));
        assertThat(uneven.length()).isCloseTo(100, within(1e-11));
        assertThat(uneven.at(uneven.parameterAt(50)).x()).isCloseTo(50, within(1e-10));
        Cubic speck = new Cubic(new Point(7, 7), new Point(7, 7), new Point(7, 7), new Point(7, 7));
        assertThat(speck.length()).isZero();
        assertThat(speck.parameterAt(0)).isZero();
    }
}
