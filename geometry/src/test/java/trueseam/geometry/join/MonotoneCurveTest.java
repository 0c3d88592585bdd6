package trueseam.geometry.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class MonotoneCurveTest {

    private static final List<Point> FIGURE =
            List.of(new Point(-210, 950), new Point(-105, 860), new Point(0, 700), new Point(190, 915));

    @Test
    void itIsTheCurveOfAGeneralReferenceLibrary() {
        // SciPy 1.17.1, scipy.interpolate.PchipInterpolator([-210, -105, 0, 190], [950, 860, 700, 915])
        MonotoneCurve curve = MonotoneCurve.through(FIGURE);
        double[][] published = {
            {-200, 944.3640211640212},
            {-150, 905.7714285714286},
            {-60, 780.9049562682216},
            {-1, 700.032911521434},
            {10, 700.3070337235644},
            {95, 740.006557707829},
            {180, 887.7703743371763}
        };
        for (double[] at : published) {
            assertThat(curve.at(at[0]).orElseThrow()).as("at %s", at[0]).isCloseTo(at[1], within(1e-9));
        }
    }

    @Test
    void itMeetsEveryPointAndEndsWithThem() {
        MonotoneCurve curve = MonotoneCurve.through(FIGURE);
        for (Point point : FIGURE) {
            assertThat(curve.at(point.x()).orElseThrow()).isCloseTo(point.y(), within(1e-9));
        }
        assertThat(curve.at(-210.001)).isEmpty();
        assertThat(curve.at(190.001)).isEmpty();
    }

    @Test
    void betweenNeighboursItStaysBetweenThem() {
        long seed = 20261126;
        Random random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            List<Point> points = new ArrayList<>();
            double x = 0;
            for (int i = 0; i < 2 + random.nextInt(5); i++) {
                x += 1 + 200 * random.nextDouble();
                points.add(new Point(x, 500 + 600 * random.nextDouble()));
            }
            MonotoneCurve curve = MonotoneCurve.through(points);
            for (int i = 1; i < points.size(); i++) {
                Point from = points.get(i - 1);
                Point to = points.get(i);
                for (int k = 0; k <= 20; k++) {
                    double at = Math.min(to.x(), from.x() + (to.x() - from.x()) * k / 20);
                    double y = curve.at(at).orElseThrow();
                    assertThat(y)
                            .as("seed %s, round %s, points %s", seed, round, points)
                            .isBetween(Math.min(from.y(), to.y()) - 1e-9, Math.max(from.y(), to.y()) + 1e-9);
                }
            }
        }
    }

    @Test
    void theSlopeDoesNotJump() {
        Path path = MonotoneCurve.through(FIGURE).path();
        for (int i = 1; i < path.segments().size(); i++) {
            var before = path.segments().get(i - 1).tangent(1);
            var after = path.segments().get(i).tangent(0);
            assertThat(before.y() / before.x()).isCloseTo(after.y() / after.x(), within(1e-9));
        }
    }

    @Test
    void twoPointsGiveAStraightLine() {
        MonotoneCurve line = MonotoneCurve.through(List.of(new Point(0, 10), new Point(10, 30)));
        assertThat(line.at(2.5).orElseThrow()).isCloseTo(15, within(1e-12));
    }

    @Test
    void pointsOutOfOrderAreRefused() {
        assertThatThrownBy(() -> MonotoneCurve.through(List.of(new Point(0, 1), new Point(0, 2))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("to the right");
        assertThatThrownBy(() -> MonotoneCurve.through(List.of(Point.ORIGIN)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two points");
    }
}
