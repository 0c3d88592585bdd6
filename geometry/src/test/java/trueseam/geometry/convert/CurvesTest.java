package trueseam.geometry.convert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.Drawn;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;

class CurvesTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aQuadraticKeepsEveryPoint(int seed) {
        Random random = new Random(seed);
        Point a = Drawn.anywhere(random, 500);
        Point h = Drawn.anywhere(random, 500);
        Point b = Drawn.anywhere(random, 500);
        Cubic c = Curves.quadratic(a, h, b);
        for (int i = 0; i <= 10; i++) {
            double t = i / 10.0;
            // De Casteljau's construction of the quadratic.
            Point p = a.towards(h, t).towards(h.towards(b, t), t);
            assertThat(c.at(t).distanceTo(p)).isCloseTo(0, within(1e-12 * 500));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 50, 400, 5000, 400_000})
    void aCircleStaysWithinAMillionthOfAMillimetre(double radius) {
        Point centre = new Point(-30, 12);
        Path circle = Curves.circle(centre, radius);
        assertThat(circle.isClosed()).isTrue();
        assertThat(circle.length()).isCloseTo(2 * Math.PI * radius, within(1e-5 + 1e-12 * radius));
        assertThat(circle.signedArea())
                .isCloseTo(Math.PI * radius * radius, within(1e-5 * radius + 1e-12 * radius * radius));
        for (Segment s : circle.segments()) {
            for (int i = 0; i <= 20; i++) {
                assertThat(s.at(i / 20.0).distanceTo(centre)).isCloseTo(radius, within(1e-6));
            }
        }
    }

    @Test
    void anArcTurnsTheWayItIsTold() {
        Path arc = Curves.arc(Point.ORIGIN, 100, Math.PI / 2, -Math.PI / 2);
        assertThat(arc.start().distanceTo(new Point(0, 100))).isCloseTo(0, within(1e-12));
        assertThat(arc.end().distanceTo(new Point(100, 0))).isCloseTo(0, within(1e-12));
        assertThat(arc.length()).isCloseTo(50 * Math.PI, within(1e-6));
        assertThatThrownBy(() -> Curves.arc(Point.ORIGIN, 0, 0, 1)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Curves.arc(Point.ORIGIN, 1, 0, 7)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Curves.circle(Point.ORIGIN, Double.NaN)).isInstanceOf(GeometryException.class);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPointOfAnEllipticalArcLiesOnItsEllipse(int seed) {
        Random random = new Random(seed);
        double rx = 1 + 300 * random.nextDouble();
        double ry = 1 + 300 * random.nextDouble();
        double turn = 7 * random.nextDouble() - 3.5;
        double from = 7 * random.nextDouble();
        double sweep = (random.nextBoolean() ? 1 : -1) * (0.05 + 6.1 * random.nextDouble());
        Point centre = Drawn.anywhere(random, 200);
        Point start = onEllipse(centre, rx, ry, turn, from);
        Point end = onEllipse(centre, rx, ry, turn, from + sweep);
        List<Cubic> arc =
                Curves.ellipticalArc(start, new Vec(-rx, ry), turn, Math.abs(sweep) > Math.PI, sweep > 0, end);
        assertThat(arc.get(0).start()).isEqualTo(start);
        assertThat(arc.get(arc.size() - 1).end()).isEqualTo(end);
        double turned = 0;
        for (Cubic c : arc) {
            for (int i = 0; i <= 10; i++) {
                Point p = c.at(i / 10.0);
                Vec v = p.minus(centre).turned(-turn);
                // Nearest distance to an ellipse, to first order: implicit value over gradient.
                double value = v.x() * v.x() / (rx * rx) + v.y() * v.y() / (ry * ry) - 1;
                double slope = 2 * Math.hypot(v.x() / (rx * rx), v.y() / (ry * ry));
                assertThat(value / slope).isCloseTo(0, within(1e-6));
            }
            turned += angle(c.start(), centre, rx, ry, turn).angleTo(angle(c.end(), centre, rx, ry, turn));
        }
        assertThat(turned).isCloseTo(sweep, within(1e-6));
    }

    private static Point onEllipse(Point centre, double rx, double ry, double turn, double angle) {
        return centre.plus(new Vec(rx * Math.cos(angle), ry * Math.sin(angle)).turned(turn));
    }

    private static Vec angle(Point p, Point centre, double rx, double ry, double turn) {
        Vec v = p.minus(centre).turned(-turn);
        return new Vec(v.x() / rx, v.y() / ry);
    }

    @ParameterizedTest
    @CsvSource({"false, false, -25", "false, true, 25", "true, false, -75", "true, true, 75"})
    void radiiTooSmallAreGrownAndFlagsChooseAmongFourArcs(boolean large, boolean sweep, double quarters) {
        // Ends 20 apart, radius 4: grown to the half circle of radius 10 (SVG 1.1, F.6.6).
        List<Cubic> half = Curves.ellipticalArc(new Point(0, 0), new Vec(4, 4), 0, large, sweep, new Point(20, 0));
        assertThat(Path.of(half).length()).isCloseTo(10 * Math.PI, within(1e-6));
        // A quarter or three quarters of a circle of radius 10.
        Path arc = Path.of(Curves.ellipticalArc(new Point(10, 0), new Vec(10, 10), 0, large, sweep, new Point(0, 10)));
        assertThat(arc.length()).isCloseTo(2 * Math.PI * 10 * Math.abs(quarters) / 100, within(1e-6));
        double curvature = arc.curvatureAt(arc.length() / 2);
        assertThat(curvature).isCloseTo(Math.signum(quarters) / 10, within(1e-5));
    }

    @Test
    void anArcWithoutLengthOrRadiusIsNone() {
        assertThat(Curves.ellipticalArc(Point.ORIGIN, new Vec(5, 5), 0, true, true, Point.ORIGIN))
                .isEmpty();
        assertThatThrownBy(() -> Curves.ellipticalArc(Point.ORIGIN, new Vec(0, 5), 0, true, true, new Point(3, 3)))
                .isInstanceOf(GeometryException.class);
    }

    @Test
    void anAffinePlacingMovesCurvesByTheirControlPoints() {
        Affine m = Affine.scale(25.4).then(Affine.UPSIDE_DOWN).then(new Affine(1, 0.2, -0.1, 1, 5, 6));
        Path drawn = Drawn.path("M 0 0 L 1 2 C 2 3 4 1 5 5");
        Path placed = m.apply(drawn);
        assertThat(placed.start()).isEqualTo(new Point(5, 6));
        Cubic before = (Cubic) drawn.segments().get(1);
        assertThat(placed.segments().get(1).at(0.3).distanceTo(m.apply(before.at(0.3))))
                .isCloseTo(0, within(1e-10));
        assertThat(Affine.NONE.apply(drawn)).isEqualTo(drawn);
        assertThatThrownBy(() -> Affine.scale(Double.NaN)).isInstanceOf(GeometryException.class);
    }
}
