package trueseam.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NearestTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noPlaceFoundByBruteForceIsNearer(int seed) {
        Random random = new Random(seed);
        Cubic c = Drawn.cubic(random);
        Path path = Path.of(c, new Line(c.end(), Drawn.anywhere(random, 500)));
        for (int i = 0; i < 20; i++) {
            Point p = Drawn.anywhere(random, 600);
            PathPlace found = path.nearest(p);
            double least = Double.POSITIVE_INFINITY;
            int n = 4000;
            for (int k = 0; k <= n; k++) {
                least = Math.min(least, c.at((double) k / n).distanceTo(p));
                least = Math.min(
                        least, path.segments().get(1).at((double) k / n).distanceTo(p));
            }
            double distance = found.point().distanceTo(p);
            assertThat(distance).isBetween(least - 0.2, least + 1e-12);
            assertThat(path.pointAt(found.alongMm()).distanceTo(found.point())).isCloseTo(0, within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPointOfThePathIsItsOwnNearest(int seed) {
        Random random = new Random(seed);
        Path path = Path.of(Drawn.cubic(random));
        Point p = path.pointAt(path.length() * random.nextDouble());
        assertThat(path.nearest(p).point().distanceTo(p)).isCloseTo(0, within(1e-9));
    }

    @Test
    void ofTwoEquallyNearPlacesTheFirstIsTaken() {
        Path gate = Drawn.path("M 0 0 L 0 10 L 10 10 L 10 0");
        assertThat(gate.nearest(new Point(5, 0)).alongMm()).isEqualTo(0);
    }
}
