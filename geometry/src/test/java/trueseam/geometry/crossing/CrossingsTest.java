package trueseam.geometry.crossing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.Drawn;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class CrossingsTest {

    private static final Path SQUARE = Drawn.path("M 0 0 L 10 0 L 10 10 L 0 10 Z");

    private static List<Crossing.Kind> kinds(List<Crossing> found) {
        return found.stream().map(Crossing::kind).toList();
    }

    @Test
    void twoLinesCrossOnce() {
        List<Crossing> found = Crossings.between(Drawn.path("M 0 0 L 10 10"), Drawn.path("M 0 10 L 10 0"));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).onFirst().point().distanceTo(new Point(5, 5))).isCloseTo(0, within(1e-12));
        assertThat(found.get(0).onSecond().alongMm()).isCloseTo(Math.sqrt(50), within(1e-12));
    }

    @Test
    void aCornerThatIsPassedIsFoundOnce() {
        List<Crossing> found = Crossings.between(Drawn.path("M -5 -5 L 5 5"), SQUARE);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).onFirst().point().distanceTo(Point.ORIGIN)).isCloseTo(0, within(1e-12));
    }

    @Test
    void aSharedEdgeIsGivenByItsTwoEnds() {
        List<Crossing> found = Crossings.between(Drawn.path("M 10 -3 L 10 4 L 20 4"), SQUARE);
        assertThat(kinds(found)).containsExactly(Crossing.Kind.SHARED_FROM, Crossing.Kind.SHARED_TO);
        assertThat(found.get(0).onFirst().alongMm()).isCloseTo(3, within(1e-9));
        assertThat(found.get(1).onFirst().alongMm()).isCloseTo(7, within(1e-9));
        assertThat(found.get(0).onSecond().alongMm()).isCloseTo(10, within(1e-9));
        assertThat(found.get(1).onSecond().alongMm()).isCloseTo(14, within(1e-9));
    }

    @Test
    void aStretchSharedOverCornersIsOneStretch() {
        List<Crossing> found = Crossings.between(Drawn.path("M 5 0 L 10 0 L 10 10 L 12 10"), SQUARE);
        assertThat(kinds(found)).containsExactly(Crossing.Kind.SHARED_FROM, Crossing.Kind.SHARED_TO);
        assertThat(found.get(1).onFirst().alongMm()).isCloseTo(15, within(1e-9));
    }

    @Test
    void partsOfOneCurveShareTheStretchBetweenTheirEnds() {
        Cubic whole = new Cubic(new Point(0, 0), new Point(30, 90), new Point(120, -40), new Point(200, 60));
        List<Crossing> found = Crossings.between(
                Path.of(whole.between(0, 0.7)), Path.of(whole.between(0.2, 1).reversed()));
        assertThat(kinds(found)).containsExactly(Crossing.Kind.SHARED_FROM, Crossing.Kind.SHARED_TO);
        assertThat(found.get(0).onFirst().alongMm()).isCloseTo(whole.lengthTo(0.2), within(1e-8));
        assertThat(found.get(1).onFirst().alongMm()).isCloseTo(whole.lengthTo(0.7), within(1e-8));
        assertThat(kinds(Crossings.between(Path.of(whole), Path.of(whole)))).hasSize(2);
    }

    @Test
    void twoCurvesThatOnlyTouchMeetOnce() {
        // y = x (100 - x) / 50 and its mirror image about its top, y = 50: one point in common, (50, 50).
        Cubic up = parabola(0, 100);
        Cubic down = new Cubic(
                new Point(0, 100),
                new Point(100.0 / 3, 100 - 200.0 / 3),
                new Point(200.0 / 3, 100 - 200.0 / 3),
                new Point(100, 100));
        List<Crossing> found = Crossings.between(Path.of(up), Path.of(down));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).onFirst().point().distanceTo(new Point(50, 50))).isCloseTo(0, within(1e-3));
        List<Crossing> line = Crossings.between(Path.of(up), Drawn.path("M 0 50 L 100 50"));
        assertThat(line).hasSize(1);
        assertThat(line.get(0).onFirst().point().distanceTo(new Point(50, 50))).isCloseTo(0, within(1e-3));
    }

    private static Cubic parabola(double from, double to) {
        double third = (to - from) / 3;
        return new Cubic(
                new Point(from, 0),
                new Point(from + third, 2 * third),
                new Point(to - third, 2 * third),
                new Point(to, 0));
    }

    @Test
    void parabolasMeetWhereTheirEquationsSay() {
        // y = x (100 - x) / 50 and x = y (100 - y) / 50: x = y = 50, and 0; two more from x + y = 150, x y = 7500: none
        // real.
        Cubic up = parabola(0, 100);
        Cubic side = new Cubic(
                new Point(0, 0), new Point(200.0 / 3, 100.0 / 3), new Point(200.0 / 3, 200.0 / 3), new Point(0, 100));
        List<Crossing> found = Crossings.between(Path.of(up), Path.of(side));
        assertThat(found).hasSize(2);
        assertThat(found.get(0).onSecond().point().distanceTo(Point.ORIGIN)).isCloseTo(0, within(1e-9));
        assertThat(found.get(1).onSecond().point().distanceTo(new Point(50, 50)))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void curvesThatMeetEndToEndMeetThere() {
        Cubic whole = new Cubic(new Point(0, 0), new Point(30, 90), new Point(120, -40), new Point(200, 60));
        List<Crossing> found = Crossings.between(Path.of(whole.between(0, 0.4)), Path.of(whole.between(0.4, 1)));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).onFirst().point().distanceTo(whole.at(0.4))).isCloseTo(0, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "M 0 0 L 10 10 L 10 0 L 0 10 Z, 1",
        "M 0 0 L 10 0 L 10 10 L 0 10 Z, 0",
        "M 0 0 C 40 60 -30 60 10 0, 1",
        "M 0 0 C 10 60 30 -60 40 0 L 40 50 L 0 50 Z, 0",
        "M 0 0 L 10 0 L 5 0 L 5 5, 2",
        "M 0 0 L 10 0 L 10 10 L 5 0 L 0 10 Z, 1",
        "M 0 0 C 40 60 -30 60 0 0, 0"
    })
    void aPathCrossesItself(String drawn, int times) {
        assertThat(Crossings.ofItself(Drawn.path(drawn))).hasSize(times);
    }

    @Test
    void strokesWithoutLengthAreHandled() {
        Path dot = Path.of(new Line(new Point(5, 0), new Point(5, 0)));
        assertThat(Crossings.between(dot, SQUARE)).hasSize(1);
        assertThat(Crossings.between(dot, dot)).hasSize(1);
        Cubic speck = new Cubic(new Point(5, 0), new Point(5, 0), new Point(5, 0), new Point(5, 0));
        assertThat(Crossings.between(SQUARE, Path.of(speck))).hasSize(1);
        assertThat(Crossings.between(Path.of(parabola(0, 10)), Path.of(speck))).isEmpty();
        assertThat(Crossings.between(Path.of(parabola(5, 10)), Path.of(speck))).hasSize(1);
    }
}
