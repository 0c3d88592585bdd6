package trueseam.geometry.offset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.geometry.Bounds;
import trueseam.geometry.Drawn;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;

class OffsetTest {

    private static final double TOLERANCE_MM = 0.01;
    private static final Path OBLONG = Drawn.path("M 0 0 L 100 0 L 100 40 L 0 40 Z");

    private static Margin margin(String line, double distanceMm) {
        return new Margin(Drawn.path(line), distanceMm);
    }

    @Test
    void anOblongGrowsByTheAllowanceOnEverySide() {
        Path wide = Offset.of(OBLONG, 15, TOLERANCE_MM);
        assertThat(wide.isClosed()).isTrue();
        assertThat(wide.signedArea()).isCloseTo(130 * 70, within(1e-6));
        assertThat(wide.bounds()).isEqualTo(new Bounds(-15, -15, 115, 55));
        assertThat(Offset.of(OBLONG, -15, TOLERANCE_MM).signedArea()).isCloseTo(70 * 10, within(1e-6));
        assertThat(Offset.of(OBLONG.reversed(), 15, TOLERANCE_MM).signedArea()).isCloseTo(-70 * 10, within(1e-6));
    }

    @Test
    void eachEdgeHasItsOwnAllowanceAndAFoldHasNone() {
        List<Margin> edges = List.of(
                margin("M 0 0 L 100 0", 30),
                margin("M 100 0 L 100 40", 15.875),
                margin("M 100 40 L 0 40", 10),
                margin("M 0 40 L 0 0", 0));
        Path cut = Offset.outline(edges, TOLERANCE_MM);
        assertThat(cut.bounds()).isEqualTo(new Bounds(0, -30, 115.875, 50));
        assertThat(cut.signedArea()).isCloseTo(115.875 * 80, within(1e-6));
        assertThat(cut.segments()).hasSizeBetween(4, 12);
        List<Margin> clockwise = List.of(
                margin("M 0 0 L 0 40", 0),
                margin("M 0 40 L 100 40", 10),
                margin("M 100 40 L 100 0", 15.875),
                margin("M 100 0 L 0 0", 30));
        assertThat(Offset.outline(clockwise, TOLERANCE_MM).signedArea()).isCloseTo(-115.875 * 80, within(1e-6));
    }

    @Test
    void theCuttingLineMeetsAFoldThatIsNotSquareOnTheFold() {
        // Fold up the y axis; the top edge slopes down at 60 degrees to it, then down and back along the bottom.
        List<Margin> edges = List.of(
                margin("M 0 0 L 60 0", 10),
                margin("M 60 0 L 60 65", 10),
                margin("M 60 65 L 0 100", 10),
                margin("M 0 100 L 0 0", 0));
        Path cut = Offset.outline(edges, TOLERANCE_MM);
        // Above the sloping edge by 10 / sin of its angle to the fold.
        double up = 10 * Math.hypot(60, 35) / 60;
        assertThat(cut.bounds().maxY()).isCloseTo(100 + up, within(1e-6));
        assertThat(cut.bounds().minX()).isCloseTo(0, within(1e-9));
    }

    @Test
    void noAllowanceGivesBackThePiece() {
        Path piece = Drawn.path("M 0 0 C 30 -5 60 5 90 0 L 90 60 C 70 90 20 90 0 60 Z");
        assertThat(Offset.of(piece, 0, TOLERANCE_MM)).isEqualTo(piece);
    }

    @Test
    void twoAllowancesAlongOneLineMakeAStep() {
        List<Margin> edges = List.of(
                margin("M 0 0 L 50 0", 10), margin("M 50 0 L 100 0", 25), margin("M 100 0 L 100 40 L 0 40 L 0 0", 10));
        Path cut = Offset.outline(edges, TOLERANCE_MM);
        assertThat(cut.signedArea()).isCloseTo(120 * 60 + 60 * 15, within(1e-6));
        assertThat(Region.faultOf(cut)).isEmpty();
    }

    @Test
    void aSpikeIsCutOffSquareAtTheMitreLimit() {
        Path spike = Drawn.path("M 0 0 L 200 -5 L 200 5 Z");
        Path cut = Offset.of(spike, 10, 3, TOLERANCE_MM);
        // The tip at the left is cut off 3 x 10 mm before it; the two corners at the right are mitred.
        assertThat(cut.bounds().minX()).isCloseTo(-30, within(1e-6));
        Path longer = Offset.of(spike, 10, 100, TOLERANCE_MM);
        assertThat(longer.bounds().minX()).isCloseTo(-10 / Math.sin(Math.atan(0.025)), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-45, -10, 5, 40})
    void aCircleBecomesTheCircleBeside(double distanceMm) {
        double k = 50 * 4.0 / 3 * Math.tan(Math.PI / 8);
        Path circle = Drawn.path("M 50 0 C 50 " + k + " " + k + " 50 0 50 C -" + k + " 50 -50 " + k + " -50 0 C -50 -"
                + k + " -" + k + " -50 0 -50 C " + k + " -50 50 -" + k + " 50 0");
        Path beside = Offset.of(circle, distanceMm, TOLERANCE_MM);
        for (int i = 0; i <= 100; i++) {
            Point p = beside.pointAt(beside.length() * i / 100);
            // Four cubics keep the circle to 2.7e-4 of its radius (closed form: see CircleTest).
            assertThat(p.distanceTo(Point.ORIGIN)).isCloseTo(50 + distanceMm, within(50 * 2.8e-4 + TOLERANCE_MM));
        }
        assertThatThrownBy(() -> Offset.of(circle, -51, TOLERANCE_MM))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("Nothing is left");
    }

    /** A neck of 60 mm radius ends square on the fold; the narrow mouth below is covered over, so the line is found by strips. */
    @Test
    void nothingReachesBeyondAFoldBesideACurveWhereTheLineIsFoundByStrips() {
        Path cut = Offset.outline(
                List.of(
                        margin("M 0 0 L 95 0 L 100 60 L 105 0 L 200 0 L 200 300 L 60 300", 16),
                        margin("M 60 300 C 60 266.863 33.137 240 0 240", 16),
                        margin("M 0 240 L 0 0", 0)),
                TOLERANCE_MM);
        assertThat(Region.faultOf(cut)).isEmpty();
        assertThat(cut.bounds().minX()).isCloseTo(0, within(TOLERANCE_MM));
        // The neck's cutting line is the circle of 60 - 16 mm about (0, 300); it meets the fold 44 mm below the centre.
        assertThat(cut.nearest(new Point(0, 256)).point().distanceTo(new Point(0, 256)))
                .isLessThan(2 * TOLERANCE_MM);
        for (double angle = 0.05; angle < 1.4; angle += 0.1) {
            Point p = new Point(44 * Math.sin(angle), 300 - 44 * Math.cos(angle));
            assertThat(cut.nearest(p).point().distanceTo(p)).isLessThan(2 * TOLERANCE_MM);
        }
    }

    @Test
    void aPieceThatFallsApartWhenNarrowedIsRefused() {
        Path bone = Drawn.path(
                "M 0 0 L 40 0 L 40 18 L 60 18 L 60 0 L 100 0 L 100 40 L 60 40 L 60 22 L 40 22 L 40 40 L 0 40 Z");
        assertThatThrownBy(() -> Offset.of(bone, -5, TOLERANCE_MM))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("falls into 2 parts");
    }

    @Test
    void aDartMouthNarrowerThanItsAllowancesIsCoveredOver() {
        Path piece = Drawn.path("M 0 0 L 45 0 L 50 60 L 55 0 L 100 0 L 100 100 L 0 100 Z");
        Path cut = Offset.of(piece, 15, TOLERANCE_MM);
        assertThat(Region.faultOf(cut)).isEmpty();
        assertThat(cut.bounds()).isEqualTo(new Bounds(-15, -15, 115, 115));
        assertThat(cut.signedArea()).isCloseTo(130 * 130, within(1e-6));
    }

    @Test
    void whatCannotBeDrawnIsRefused() {
        assertThatThrownBy(() -> Offset.of(OBLONG, Double.NaN, TOLERANCE_MM)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Offset.of(OBLONG, 1e9, TOLERANCE_MM)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Offset.of(OBLONG, 10, 0)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Offset.of(OBLONG, 10, 0.5, 0.01)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Offset.outline(List.of(), 0.01)).isInstanceOf(GeometryException.class);
        assertThatThrownBy(() -> Offset.outline(List.of(margin("M 0 0 L 9 0 L 9 9", 1)), 0.01))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("do not close");
        assertThatThrownBy(() -> Offset.of(Drawn.path("M 0 0 L 9 9 L 9 0 L 0 9 Z"), 1, 0.01))
                .isInstanceOf(GeometryException.class)
                .hasMessageContaining("crosses");
        assertThatThrownBy(() -> Offset.of(Drawn.path("M 1 1 L 1 1"), 1, 0.01)).isInstanceOf(GeometryException.class);
    }
}
