package trueseam.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.geometry.crossing.Crossings;
import trueseam.geometry.join.Joining;
import trueseam.geometry.offset.Offset;
import trueseam.geometry.polygon.Region;

/** Shapes that nobody draws on purpose: each answer is a clear refusal or a finite result, and it comes. */
class DegenerateInputTest {

    private static final Duration HANG = Duration.ofSeconds(20);

    @ParameterizedTest
    @ValueSource(
            doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e9, -1.1e6, Double.MAX_VALUE})
    void whatIsNoPlaceOnPaperIsRefusedAtOnce(double wrong) {
        assertThatThrownBy(() -> new Point(wrong, 0))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("no place on paper");
        assertThatThrownBy(() -> new Point(0, wrong)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Point.ORIGIN.plus(new Vec(1, 1).times(wrong))).isInstanceOf(GeometryException.class);
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    /** Coordinates from few values, some a rounding error apart, some at the rim of the paper. */
    private static Point awkward(Random random) {
        double[] of = {0, 0, 0, 10, 10, 50, Math.nextUp(10.0), 1e-9, 1e-300, 999_999, -999_999};
        return new Point(of[random.nextInt(of.length)], of[random.nextInt(of.length)]);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void coincidentCollinearAndHugeCurvesAreMeasuredOrRefused(int seed) {
        Random random = new Random(seed);
        assertTimeoutPreemptively(HANG, () -> {
            Cubic c = new Cubic(awkward(random), awkward(random), awkward(random), awkward(random));
            double length = c.length();
            assertThat(length).isBetween(c.start().distanceTo(c.end()) * (1 - 1e-9), 1e7);
            for (double share : new double[] {0, 1e-12, 0.3, 1}) {
                double t = c.parameterAt(share * length);
                assertThat(c.lengthTo(t)).isBetween(share * length - 1e-8, share * length + 1e-8);
            }
            Path path = Path.of(c, new Line(c.end(), awkward(random)));
            Point p = awkward(random);
            assertThat(path.nearest(p).point().distanceTo(p))
                    .isLessThanOrEqualTo(c.start().distanceTo(p) + 1e-6);
            path.crossings(p, new Vec(1, random.nextInt(3)));
            assertThat(path.bounds().width()).isNotNegative();
            assertThat(Double.isFinite(path.signedArea())).isTrue();
            anything(() -> Crossings.ofItself(path));
            anything(() -> Crossings.between(path, path.reversed()));
            anything(() -> Region.faultOf(path));
            anything(() -> Joining.smooth(awkward(random), Vec.atAngle(random.nextInt(7)), p, Vec.atAngle(1)));
            anything(() ->
                    Joining.smoothOfLength(awkward(random), Vec.atAngle(random.nextInt(7)), p, Vec.atAngle(1), 20));
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void awkwardOutlinesAreOffsetOrRefused(int seed) {
        Random random = new Random(seed);
        double[] of = {0, 0, 10, 10, 50, Math.nextUp(10.0), 1e-9, 1e-7, 30};
        Point[] corners = new Point[5 + random.nextInt(3)];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Point(of[random.nextInt(of.length)], of[random.nextInt(of.length)]);
        }
        corners[corners.length - 1] = corners[0];
        assertTimeoutPreemptively(
                HANG,
                () -> anything(() -> {
                    Path offset = Offset.of(Path.through(corners), 4, 0.01);
                    assertThat(Region.faultOf(offset)).isEmpty();
                }));
    }

    /** Done or refused by the room's own exception; nothing else may come out. */
    private static void anything(Runnable work) {
        try {
            work.run();
        } catch (GeometryException refused) {
            assertThat(refused.getMessage()).isNotBlank();
        }
    }
}
