package trueseam.geometry.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

class SmoothOfLengthTest {

    private static final Point A = new Point(-40, 310);

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void hasTheLengthAndTheDirectionsAndNoLoop(int seed) {
        Random random = new Random(seed);
        Vec chord = Vec.atAngle(7 * random.nextDouble()).times(20 + 400 * random.nextDouble());
        Vec out = chord.turned(0.1 + 1.2 * random.nextDouble());
        Vec in = chord.turned((random.nextBoolean() ? 1 : -1) * (0.1 + 1.2 * random.nextDouble()));
        Point b = A.plus(chord);
        double gentle = Joining.smooth(A, out, b, in).length();
        double wanted = chord.length() + (gentle - chord.length()) * (0.5 + random.nextDouble());
        Cubic c = Joining.smoothOfLength(A, out, b, in, wanted);
        assertThat(c.length()).isCloseTo(wanted, within(1e-9));
        assertThat(c.tangent(0).angleTo(out)).isCloseTo(0, within(1e-9));
        assertThat(c.tangent(1).angleTo(in)).isCloseTo(0, within(1e-9));
        assertThat(crossesItself(c)).isFalse();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theLimitsItNamesCanBeReachedAndNothingBeyond(int seed) {
        Random random = new Random(seed);
        Vec chord = Vec.atAngle(7 * random.nextDouble()).times(20 + 400 * random.nextDouble());
        Vec out = chord.turned(5 * random.nextDouble() - 2.5);
        Vec in = chord.turned(5 * random.nextDouble() - 2.5);
        Point b = A.plus(chord);
        LengthOutOfReachException no =
                catchThrowableOfType(LengthOutOfReachException.class, () -> Joining.smoothOfLength(A, out, b, in, 1e5));
        assertThat(no.wantedMm()).isEqualTo(1e5);
        assertThat(no.shortestMm()).isBetween(chord.length(), no.longestMm());
        Cubic longest = Joining.smoothOfLength(A, out, b, in, no.longestMm() - 1e-6);
        assertThat(longest.length()).isCloseTo(no.longestMm(), within(2e-6));
        assertThat(crossesItself(longest)).isFalse();
        Joining.smoothOfLength(A, out, b, in, no.shortestMm());
        assertThatThrownBy(() -> Joining.smoothOfLength(A, out, b, in, no.shortestMm() - 1e-3))
                .isInstanceOf(LengthOutOfReachException.class);
        assertThatThrownBy(() -> Joining.smoothOfLength(A, out, b, in, no.longestMm() * 1.01 + 1e-3))
                .isInstanceOf(LengthOutOfReachException.class);
    }

    @Test
    void aStraightLineHasOneLengthOnly() {
        Vec up = new Vec(0, 1);
        Point b = A.plus(new Vec(0, 200));
        assertThat(Joining.smoothOfLength(A, up, b, up, 200).length()).isCloseTo(200, within(1e-9));
        assertThatThrownBy(() -> Joining.smoothOfLength(A, up, b, up, 203))
                .isInstanceOf(LengthOutOfReachException.class)
                .hasMessageContaining("cannot be 203.000 mm long: 200.000 to 200.000 mm can be reached");
        assertThatThrownBy(() -> Joining.smoothOfLength(A, up, b, up, Double.NaN))
                .isInstanceOf(LengthOutOfReachException.class);
    }

    /** A slow independent way: any two chords of a fine flattening that cross. */
    private static boolean crossesItself(Cubic c) {
        int n = 150;
        for (int i = 0; i < n; i++) {
            Point p = c.at((double) i / n);
            Vec v = c.at((i + 1.0) / n).minus(p);
            for (int k = i + 2; k < n; k++) {
                Point q = c.at((double) k / n);
                Vec w = c.at((k + 1.0) / n).minus(q);
                double s = q.minus(p).cross(w) / v.cross(w);
                double u = q.minus(p).cross(v) / v.cross(w);
                if (0 < s && s < 1 && 0 < u && u < 1) {
                    return true;
                }
            }
        }
        return false;
    }
}
