package trueseam.geometry.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Motion;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

class JoiningTest {

    private static final Point A = new Point(10, 20);

    @ParameterizedTest
    @CsvSource({"30", "60", "90", "120", "180", "240"})
    void equalEndAnglesGiveTheUsualArcOfACircle(double turnDeg) {
        double turn = Math.toRadians(turnDeg);
        double radius = 100;
        Point b = new Point(radius * Math.sin(turn), radius * (1 - Math.cos(turn)));
        Cubic arc = Joining.smooth(Point.ORIGIN, new Vec(1, 0), b, Vec.atAngle(turn));
        // Closed form: the cubic that touches the circle at its ends and its middle has handles 4/3 tan(turn / 4) r.
        double handle = 4.0 / 3 * Math.tan(turn / 4) * radius;
        assertThat(arc.handle1().distanceTo(arc.start()))
                .isCloseTo(Math.min(handle, 4.0 / 3 * b.distanceTo(Point.ORIGIN)), within(1e-9));
        if (turnDeg <= 180) {
            assertThat(arc.at(0.5).distanceTo(new Point(0, radius))).isCloseTo(radius, within(1e-9));
        }
    }

    @Test
    void endsThatLieInOneLineGiveThatLineWithHandlesOfAThird() {
        Cubic c = Joining.smooth(A, new Vec(3, 4), A.plus(new Vec(30, 40)), new Vec(0.3, 0.4));
        assertThat(c.handle1().distanceTo(A.plus(new Vec(10, 40.0 / 3)))).isCloseTo(0, within(1e-9));
        assertThat(c.length()).isCloseTo(50, within(1e-9));
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void leavesAndArrivesInTheDirectionsAsked(int seed) {
        Random random = new Random(seed);
        Vec chord = Vec.atAngle(7 * random.nextDouble()).times(5 + 600 * random.nextDouble());
        Vec out = chord.turned(4 * random.nextDouble() - 2);
        Vec in = chord.turned(4 * random.nextDouble() - 2);
        Cubic c = Joining.smooth(A, out, A.plus(chord), in);
        assertThat(c.tangent(0).angleTo(out)).isCloseTo(0, within(1e-9));
        assertThat(c.tangent(1).angleTo(in)).isCloseTo(0, within(1e-9));
        assertThat(c.start()).isEqualTo(A);
        assertThat(c.end()).isEqualTo(A.plus(chord));
        Motion m = Motion.pivot(new Point(3, -80), 1.1);
        Cubic moved = Joining.smooth(m.apply(A), m.apply(out), m.apply(c.end()), m.apply(in));
        assertThat(moved.at(0.3).distanceTo(m.apply(c.at(0.3)))).isCloseTo(0, within(1e-9));
    }

    /** Up to 60 degrees off the chord at either end, the shapes that truing draws. */
    @ParameterizedTest
    @MethodSource("seeds")
    void bendsHardlyMoreThanTheBestOfAllHandleLengths(int seed) {
        Random random = new Random(seed);
        Vec chord = new Vec(100, 0);
        Vec out = chord.turned(Math.toRadians(120 * random.nextDouble() - 60));
        Vec in = chord.turned(Math.toRadians(120 * random.nextDouble() - 60));
        double best = Double.POSITIVE_INFINITY;
        for (int i = 4; i <= 100; i++) {
            for (int k = 4; k <= 100; k++) {
                Vec first = out.unit().times(i);
                Vec last = in.unit().times(-k);
                best = Math.min(best, bending(Cubic.of(A, first, last, A.plus(chord)), 40));
            }
        }
        double ours = bending(Joining.smooth(A, out, A.plus(chord), in), 40);
        assertThat(ours).isLessThan(best * 1.02 + 1e-9);
    }

    /** Integral of squared curvature over the length, by the midpoint rule. */
    private static double bending(Cubic c, int steps) {
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) / steps;
            double k = c.curvature(t);
            sum += k * k * c.derivative(t).length() / steps;
        }
        return sum;
    }

    @Test
    void aFreeEndTurnsHalfAsFarTheOtherWay() {
        // A thin beam clamped at a slope and only supported at its other end: y = s x (1 - x)(2 - x) / 2, slope there
        // -s/2.
        Cubic c = Joining.tangentFromStart(Point.ORIGIN, new Vec(1, 0.02), new Point(100, 0));
        assertThat(c.tangent(1).angle()).isCloseTo(-0.01, within(1e-4));
        assertThat(c.at(0.5).y()).isCloseTo(0.02 * 0.5 * 0.5 * 1.5 / 2 * 100, within(1e-3));
        Cubic back = Joining.tangentToEnd(new Point(100, 0), Point.ORIGIN, new Vec(-1, -0.02));
        assertThat(back).isEqualTo(c.reversed());
    }

    @Test
    void refusesToJoinAPointToItselfOrWithoutDirection() {
        assertThatThrownBy(() -> Joining.smooth(A, new Vec(1, 0), A, new Vec(1, 0)))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("to itself");
        assertThatThrownBy(() -> Joining.smooth(A, Vec.ZERO, Point.ORIGIN, new Vec(1, 0)))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("no direction");
    }

    @Test
    void endsPointingStraightBackStillGiveAFiniteCurve() {
        Cubic c = Joining.smooth(Point.ORIGIN, new Vec(-1, 0), new Point(100, 0), new Vec(-1, 1e-300));
        assertThat(c.handle1().distanceTo(c.start())).isLessThan(400);
    }
}
