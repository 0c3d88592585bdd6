package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

class DartCapTest {

    private static final Point APEX = new Point(0, 0);

    // A right-angled triangle: the leg, square to it the continued edge, and the fold as hypotenuse.
    @Test
    void ofAnEdgeSquareToItsLegsTheCapLiesALegOverTheCosineAway() {
        double half = Math.toRadians(7);
        Point leg = new Point(-100 * Math.sin(half), -100 * Math.cos(half));
        Vec away = leg.minus(APEX).unit().right(); // the edge comes from the left, square to the leg
        Point cap = DartCap.point(APEX, leg, away, half);
        assertThat(cap.x()).isCloseTo(0, within(1e-9));
        assertThat(cap.y()).isCloseTo(-100 / Math.cos(half), within(1e-9));
    }

    // Folding the paper: laid over at the leg, the cap's edge lies on the edge of the piece (common practice).
    @Test
    void foldedAtItsLegTheCapLiesOnTheEdge() {
        Point leg = new Point(120, -60);
        Vec away = new Vec(-0.2, -1).unit();
        Point cap = DartCap.point(APEX, leg, away, Math.toRadians(6));
        Vec axis = leg.minus(APEX).unit();
        Vec toCap = cap.minus(leg);
        Vec folded = axis.times(2 * axis.dot(toCap)).minus(toCap);
        assertThat(folded.length()).isGreaterThan(1);
        assertThat(folded.angleTo(away)).isCloseTo(0, within(1e-9));
    }

    @Test
    void theCapLiesOnTheFoldOfTheDart() {
        Point leg = new Point(120, -60);
        Point cap = DartCap.point(APEX, leg, new Vec(-0.2, -1).unit(), Math.toRadians(6));
        assertThat(Math.toDegrees(leg.minus(APEX).angleTo(cap.minus(APEX)))).isCloseTo(6, within(1e-9));
    }
}
