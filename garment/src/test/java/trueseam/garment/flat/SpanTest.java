package trueseam.garment.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class SpanTest {

    /** Half a skirt: hem of h at y = 0, waist of w at y = 600, side straight between; a waist dart of k to (80, 450). */
    private static Piece skirt(double hemMm, double waistMm, double intakeMm) {
        Point b = new Point(hemMm, 0);
        Point c = new Point(waistMm, 600);
        Point d = new Point(0, 600);
        double leg = waistMm - 80 - intakeMm / 2;
        return new PieceBuilder("front", PieceKind.SKIRT_FRONT)
                .edge("hem", EdgeRole.HEM, Path.through(Point.ORIGIN, b), 0)
                .edge("side", EdgeRole.SIDE, Path.through(b, c), 0)
                .edge("waist", EdgeRole.WAIST, Path.through(c, d), 0)
                .edge("centre", EdgeRole.CENTRE, Path.through(d, Point.ORIGIN), 0)
                .dart(new Dart.EdgeDart("waist dart", "waist", leg, leg + intakeMm, new Point(80, 450)))
                .grain(new Grain(Point.ORIGIN, d))
                .build();
    }

    private static double width(Piece piece, double y) {
        return Span.at(piece, y).orElseThrow().widthMm();
    }

    @Test
    void theWidthOfATrapezoidGoesEvenlyFromHemToWaist() {
        Piece skirt = skirt(300, 240, 20);
        assertThat(width(skirt, 0)).isCloseTo(300, within(1e-9));
        assertThat(width(skirt, 300)).isCloseTo(270, within(1e-9));
        assertThat(width(skirt, 450)).isCloseTo(255, within(1e-9)); // at the apex nothing is taken up
    }

    @Test
    void halfWayUpADartHalfItsIntakeIsLeftOut() {
        Piece skirt = skirt(300, 240, 20);
        Span span = Span.at(skirt, 525).orElseThrow();
        assertThat(span.dartsMm()).isCloseTo(10, within(1e-9));
        assertThat(span.widthMm()).isCloseTo(247.5 - 10, within(1e-9));
        assertThat(width(skirt, 600)).isCloseTo(240 - 20, within(1e-9));
    }

    @Test
    void aDartInsideIsLeftOutWhereItIsWidestAndNotBeyondItsPoints() {
        Piece skirt = skirt(300, 300, 1).toBuilder()
                .dart(new Dart.DiamondDart(
                        "inside", new Point(200, 400), new Point(200, 100), new Point(190, 250), new Point(214, 250)))
                .build();
        assertThat(width(skirt, 250)).isCloseTo(300 - 24, within(1e-9));
        assertThat(width(skirt, 175)).isCloseTo(300 - 12, within(1e-9));
        assertThat(width(skirt, 50)).isCloseTo(300, within(1e-9));
        assertThat(width(skirt, 400)).isCloseTo(300, within(1e-9));
    }

    @Test
    void aDartInTheSideTakesNoWidth() {
        Piece skirt = skirt(300, 300, 1).toBuilder()
                .dart(new Dart.EdgeDart("side dart", "side", 200, 230, new Point(150, 200)))
                .build();
        assertThat(width(skirt, 210)).isCloseTo(300, within(1e-9));
    }

    @Test
    void aLevelAboveOrBelowThePieceHasNoWidth() {
        assertThat(Span.at(skirt(300, 240, 20), 600.001)).isEmpty();
        assertThat(Span.at(skirt(300, 240, 20), -0.001)).isEmpty();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    /** Similar triangles: at height y the piece is h + (w - h) y / 600 wide, less k (y - 450) / 150 where that is above 0. */
    @ParameterizedTest
    @MethodSource("seeds")
    void everyTrapezoidIsAsWideAsSimilarTrianglesSay(long seed) {
        Random random = new Random(seed);
        double hem = 200 + 200 * random.nextDouble();
        double waist = 200 + 200 * random.nextDouble();
        double intake = 1 + 60 * random.nextDouble();
        double y = 600 * random.nextDouble();
        double expected = hem + (waist - hem) * y / 600 - Math.max(0, intake * (y - 450) / 150);
        assertThat(width(skirt(hem, waist, intake), y)).isCloseTo(expected, within(1e-9));
    }
}
