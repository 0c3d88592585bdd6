package trueseam.garment.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Lines that go over from one to another. */
class CrossoverTest {

    private static Path line(double x, double top, double bottom) {
        return Path.of(new Line(new Point(x, top), new Point(x, bottom)));
    }

    @Test
    void betweenTwoUprightLinesItIsTheCubicWithUprightHandles() {
        // x = 10 (3 t^2 - 2 t^3), y = -300 t: in Bezier form the cubic below (closed form, from the Bernstein basis).
        Path drawn = Crossover.of(line(0, 0, -300), line(10, 0, -300));
        Path exact = Path.of(new Cubic(new Point(0, 0), new Point(0, -100), new Point(10, -200), new Point(10, -300)));
        for (double t = 0; t <= 1; t += 0.05) {
            Point p = drawn.pointAt(t * drawn.length());
            assertThat(exact.nearest(p).point().distanceTo(p)).isLessThan(0.005);
        }
        assertThat(drawn.length()).isCloseTo(exact.length(), within(0.001));
    }

    @Test
    void overTheSameStraightItIsStraight() {
        Path drawn = Crossover.of(line(5, 0, -100), line(5, -3, -106));
        assertThat(drawn.segments()).hasSize(1);
        assertThat(drawn.start()).isEqualTo(new Point(5, 0));
        assertThat(drawn.end()).isEqualTo(new Point(5, -106));
    }

    @Test
    void itLeavesAndArrivesAlongTheTwoLinesAndRunsSmoothlyBetweenThem() {
        Random random = new Random(20261126);
        for (int n = 0; n < 200; n++) {
            Path a = curve(random, 0);
            Path b = curve(random, 5 + 40 * random.nextDouble());
            Path drawn = Crossover.of(a, b);
            assertThat(drawn.start().isNear(a.start(), 1e-9)).isTrue();
            assertThat(drawn.end().isNear(b.end(), 1e-9)).isTrue();
            assertThat(Math.abs(drawn.startTangent().cross(a.startTangent()))).isLessThan(1e-6);
            assertThat(Math.abs(drawn.endTangent().cross(b.endTangent()))).isLessThan(1e-6);
            for (int i = 1; i < drawn.segments().size(); i++) {
                Vec before = drawn.segments().get(i - 1).tangent(1);
                Vec after = drawn.segments().get(i).tangent(0);
                assertThat(Math.abs(before.cross(after))).as("run " + n).isLessThan(1e-6);
            }
            for (double t = 0.1; t < 1; t += 0.1) {
                Point p = drawn.pointAt(t * drawn.length());
                double left = a.atLevel(p.y()).map(place -> place.point().x()).orElse(p.x());
                double right = b.atLevel(p.y()).map(place -> place.point().x()).orElse(p.x());
                // Between the two lines: points at one share lie at slightly different heights, which the slant makes
                // up.
                assertThat(p.x()).as("run " + n).isBetween(Math.min(left, right) - 0.5, Math.max(left, right) + 0.5);
            }
        }
    }

    /** A side seam of sorts. */
    private static Path curve(Random random, double x) {
        double bulge = 8 * random.nextDouble() - 4;
        return Path.of(new Cubic(
                new Point(x, 0),
                new Point(x + bulge, -60 - 20 * random.nextDouble()),
                new Point(x + bulge, -120 - 20 * random.nextDouble()),
                new Point(x + 4 * random.nextDouble(), -200)));
    }
}
