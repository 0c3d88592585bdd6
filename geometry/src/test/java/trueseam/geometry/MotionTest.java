package trueseam.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MotionTest {

    private static final Point PIN = new Point(120, 430);

    /**
     * The turns and rises of typical pivots, to the digits given: turn and vertical shift of a point at an offset from its
     * pin that is carried a distance across the grain. Derived, closed form: r cos(phi + theta) = x + d.
     */
    @ParameterizedTest
    @CsvSource({
        "30, -190, 12.70, 3.8531, 2.4454", // shoulder point to front underarm
        "30, -190, 6.35, 1.9203, 1.1120",
        "45, -200, 12.70, 3.6672, 3.2877", // shoulder point to back underarm
        "-25, -200, 6.35, 1.8158, -0.6917", // underarm to waist
        "50, -200, 6.35, 1.8267, 1.6955", // side waist to hip
        "160, -130, 12.70, 5.9938, 17.4180", // cap top to sleeve underarm
    })
    void aPivotTurnsAndLiftsAsTheClosedFormSays(double x, double y, double across, double turnDeg, double rise) {
        Point q = PIN.plus(new Vec(x, y));
        Motion m = Motion.pivotAcross(PIN, q, across);
        Vec moved = m.apply(q).minus(q);
        assertThat(Math.toDegrees(m.turnRad())).isCloseTo(turnDeg, within(0.5e-4));
        assertThat(moved.x()).isCloseTo(across, within(1e-9));
        assertThat(moved.y()).isCloseTo(rise, within(0.5e-4));
        assertThat(m.apply(PIN).distanceTo(PIN)).isCloseTo(0, within(1e-9));
    }

    /** Shoulder slope by a pivot at the neck point: up means across a grain turned by a quarter. Derived, closed form. */
    @ParameterizedTest
    @CsvSource({"6.35, 3.0557, 2.07", "12.70, 6.0638, 3.78"})
    void aShoulderRaisedAtTheNeckMovesOutward(double up, double turnDeg, double outward) {
        Point shoulder = PIN.plus(new Vec(118, -42));
        Motion quarter = Motion.pivot(PIN, -Math.PI / 2); // what was up is now to the right
        Motion m = quarter.then(Motion.pivotAcross(PIN, quarter.apply(shoulder), up))
                .then(quarter.inverse());
        assertThat(Math.toDegrees(m.turnRad())).isCloseTo(turnDeg, within(0.5e-4));
        assertThat(m.apply(shoulder).x() - shoulder.x()).isCloseTo(outward, within(0.5e-2));
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPivotAndThePivotBackReturn(int seed) {
        Random random = new Random(seed);
        Point q = PIN.plus(new Vec(120 * random.nextDouble() - 60, -100 - 200 * random.nextDouble()));
        double across = 40 * random.nextDouble() - 20;
        Motion there = Motion.pivotAcross(PIN, q, across);
        Motion back = Motion.pivotAcross(PIN, there.apply(q), -across);
        assertThat(there.then(back).isNone(1e-9)).isTrue();
        assertThat(there.then(there.inverse()).isNone(1e-9)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void distancesStayAndMotionsChain(int seed) {
        Random random = new Random(seed);
        Motion m = Motion.pivot(Drawn.anywhere(random, 1000), 10 * random.nextDouble());
        Motion n = Motion.slide(new Vec(random.nextDouble(), 100)).then(Motion.pivot(PIN, random.nextDouble()));
        Point p = Drawn.anywhere(random, 800);
        Point q = Drawn.anywhere(random, 800);
        assertThat(m.apply(p).distanceTo(m.apply(q))).isCloseTo(p.distanceTo(q), within(1e-9));
        assertThat(m.then(n).apply(p).distanceTo(n.apply(m.apply(p)))).isCloseTo(0, within(1e-9));
        assertThat(m.apply(q.minus(p)).minus(m.apply(q).minus(m.apply(p))).length())
                .isLessThan(1e-9);
    }

    @Test
    void aThousandSmallTurnsAreStillATurn() {
        Motion sum = Motion.NONE;
        for (int i = 0; i < 1000; i++) {
            sum = sum.then(Motion.pivot(PIN, 2 * Math.PI / 1000));
        }
        assertThat(sum.isNone(1e-8)).isTrue();
    }

    @Test
    void aPivotBeyondReachNamesTheLargestReachableAmount() {
        Point q = PIN.plus(new Vec(30, -40)); // 50 from the pin: it reaches 20 to the right and 80 to the left
        OutOfReachException no =
                catchThrowableOfType(OutOfReachException.class, () -> Motion.pivotAcross(PIN, q, 20.5));
        assertThat(no)
                .hasMessageStartingWith(
                        "20.5 mm wanted, 20.0 mm reachable across the grain for the point (150.0, 390.0)"
                                + " about the pin (120.0, 430.0);");
        assertThat(no.reachMm()).isCloseTo(20, within(1e-12));
        assertThat(no.wantedMm()).isEqualTo(20.5);
        assertThat(no.pin()).isEqualTo(PIN);
        assertThat(no.point()).isEqualTo(q);
        assertThat(Motion.pivotAcross(PIN, q, 20).apply(q).x()).isCloseTo(170, within(1e-9));
        OutOfReachException left =
                catchThrowableOfType(OutOfReachException.class, () -> Motion.pivotAcross(PIN, q, -81));
        assertThat(left.reachMm()).isCloseTo(-80, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e9})
    void nothingIsPivotedByWhatIsNoAmount(double across) {
        assertThatThrownBy(() -> Motion.pivotAcross(PIN, Point.ORIGIN, across)).isInstanceOf(GeometryException.class);
        assertThat(Motion.pivotAcross(PIN, PIN, 0).isNone(0)).isTrue();
        assertThatThrownBy(() -> Motion.pivotAcross(PIN, PIN, 1)).isInstanceOf(OutOfReachException.class);
    }

    @Test
    void aStretchIsNoMotion() {
        assertThatThrownBy(() -> new Motion(1.001, 0, 0, 0)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> new Motion(Double.NaN, 0, 0, 0)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Motion.slide(new Vec(1, 0).times(Double.POSITIVE_INFINITY)))
                .isInstanceOf(GeometryException.class);
    }
}
