package trueseam.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PathTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    private static Path wander(Random random) {
        List<Segment> strokes = new ArrayList<>();
        Point at = Drawn.anywhere(random, 400);
        for (int i = 0; i < 6; i++) {
            Point to = Drawn.anywhere(random, 400);
            strokes.add(
                    random.nextInt(3) == 0
                            ? new Line(at, to)
                            : new Cubic(at, Drawn.anywhere(random, 500), Drawn.anywhere(random, 500), to));
            at = to;
        }
        return Path.of(strokes);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void partsThatMeetAreThePathAgain(int seed) {
        Random random = new Random(seed);
        Path path = wander(random);
        double whole = path.length();
        double cut = whole * random.nextDouble();
        Path first = path.part(0, cut);
        Path second = path.part(cut, whole);
        assertThat(first.length() + second.length()).isCloseTo(whole, within(1e-9));
        Path joined = first.then(second);
        for (int i = 0; i <= 20; i++) {
            double along = whole * i / 20;
            assertThat(joined.pointAt(along).distanceTo(path.pointAt(along))).isCloseTo(0, within(1e-8));
        }
        assertThat(path.part(0, whole)).isEqualTo(path);
    }

    /** Lengths are carried along when a path is cut, moved or reversed; they must be what measuring anew gives. */
    @ParameterizedTest
    @MethodSource("seeds")
    void carriedLengthsAreTrueLengths(int seed) {
        Random random = new Random(seed);
        Path path = wander(random);
        double from = path.length() * 0.6 * random.nextDouble();
        double to = from + (path.length() - from) * random.nextDouble();
        Motion m = Motion.pivot(Drawn.anywhere(random, 300), random.nextDouble());
        Path carried =
                path.part(from, to).reversed().moved(m).then(Path.through(m.apply(path.pointAt(from)), Point.ORIGIN));
        Path anew = Path.of(carried.segments());
        assertThat(carried.length()).isCloseTo(anew.length(), within(1e-9));
        for (int i = 0; i < carried.segments().size(); i++) {
            assertThat(carried.startOf(i)).isCloseTo(anew.startOf(i), within(1e-9));
        }
        assertThat(path.part(from, to).length()).isCloseTo(to - from, within(1e-9));
        assertThat(path.reversed().signedArea()).isCloseTo(-path.signedArea(), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void flatteningKeepsItsTolerance(int seed) {
        Random random = new Random(seed);
        Path path = wander(random);
        double tolerance = Math.pow(10, -4 * random.nextDouble());
        Path chords = Path.through(path.flattened(tolerance).toArray(Point[]::new));
        for (int i = 0; i <= 300; i++) {
            Point p = path.pointAt(path.length() * i / 300);
            assertThat(chords.nearest(p).point().distanceTo(p)).isLessThanOrEqualTo(tolerance + 1e-9);
        }
        assertThat(chords.length()).isLessThanOrEqualTo(path.length() + 1e-9);
    }

    @Test
    void placesOnASquare() {
        Path square = Drawn.path("M 0 0 L 10 0 L 10 10 L 0 10 Z");
        assertThat(square.isClosed()).isTrue();
        assertThat(square.length()).isEqualTo(40);
        assertThat(square.signedArea()).isEqualTo(100);
        assertThat(square.pointAt(15)).isEqualTo(new Point(10, 5));
        assertThat(square.tangentAt(10)).isEqualTo(new Vec(0, 1)); // at a corner: of the stroke that begins there
        assertThat(square.part(5, 10).segments()).hasSize(1);
        assertThat(square.part(10, 10).length()).isZero();
        assertThat(square.atLevel(4).orElseThrow().alongMm()).isEqualTo(14);
        assertThat(square.crossings(Point.ORIGIN, new Vec(1, 1))).hasSize(3); // the closing corner at 0 and at 40
        assertThat(square.atLevel(11)).isEmpty();
    }

    @Test
    void aCurveTouchedAtItsTopIsCrossedOnce() {
        Path arch = Drawn.path("M 0 0 C 0 40 40 40 40 0");
        assertThat(arch.crossings(new Point(0, 30), new Vec(1, 0))).hasSizeLessThanOrEqualTo(1);
        assertThat(arch.crossings(new Point(0, 29.9), new Vec(1, 0))).hasSize(2);
        assertThat(arch.crossings(new Point(0, 0), new Vec(1, 0))).hasSize(2);
    }

    @Test
    void whatIsNoPlaceIsRefused() {
        Path line = Drawn.path("M 0 0 L 10 0");
        for (double nowhere : new double[] {-0.1, 10.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> line.pointAt(nowhere)).isInstanceOf(GeometryException.class);
            assertThatThrownBy(() -> line.part(0, nowhere)).isInstanceOf(GeometryException.class);
        }
        assertThatThrownBy(() -> line.part(6, 5)).hasMessageContaining("backwards");
        assertThatThrownBy(() -> Path.of(List.of())).isInstanceOf(GeometryException.class);
        assertThatThrownBy(
                        () -> Path.of(new Line(Point.ORIGIN, new Point(1, 0)), new Line(new Point(2, 0), Point.ORIGIN)))
                .hasMessageContaining("a gap of 1.0 mm");
        assertThatThrownBy(() -> line.then(line)).hasMessageContaining("gap");
        assertThatThrownBy(() -> line.flattened(0)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> line.flattened(Double.NaN)).isInstanceOf(GeometryException.class);
    }
}
