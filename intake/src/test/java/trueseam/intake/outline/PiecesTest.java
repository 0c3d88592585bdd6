package trueseam.intake.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.geometry.Line;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.svg.SvgDrawing;

/** Pieces out of loose lines. */
class PiecesTest {

    private static final Look DASHED = new Look("#000000", 0.25, List.of(4.0, 2.0));

    private static Stroke stroke(Look look, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return new Stroke(trueseam.geometry.Path.through(points.toArray(new Point[0])), look, "", "");
    }

    private static Pieces pieces(List<Stroke> strokes) {
        return Pieces.of(new Drawing("test", strokes, List.of(), List.of()));
    }

    /** A rectangle of 200 by 100 cut into many lines, in any order and direction, ends up to 0.2 mm apart. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void looseLinesCloseToAnOutlineWhateverTheirOrder(long seed) {
        Random random = new Random(seed);
        double[][] corners = {{0, 0}, {200, 0}, {200, 100}, {0, 100}, {0, 0}};
        List<Stroke> strokes = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            for (int part = 0; part < 5; part++) {
                Point a = between(corners[side], corners[side + 1], part / 5.0, random);
                Point b = between(corners[side], corners[side + 1], (part + 1) / 5.0, random);
                boolean turned = random.nextBoolean();
                strokes.add(new Stroke(
                        trueseam.geometry.Path.of(new Line(turned ? b : a, turned ? a : b)), Look.PLAIN, "", ""));
            }
        }
        Collections.shuffle(strokes, random);
        Pieces pieces = pieces(strokes);
        assertThat(pieces.pieces()).hasSize(1);
        assertThat(Math.abs(pieces.pieces().get(0).outer().path().signedArea())).isCloseTo(20_000, within(100.0));
        assertThat(pieces.loose()).isEmpty();
    }

    private static Point between(double[] a, double[] b, double share, Random random) {
        return new Point(
                a[0] + share * (b[0] - a[0]) + 0.1 * random.nextDouble(),
                a[1] + share * (b[1] - a[1]) + 0.1 * random.nextDouble());
    }

    @Test
    void linesAcrossThePieceFromCornerToCornerStayInsideIt() {
        List<Stroke> strokes = List.of(
                stroke(Look.PLAIN, 0, 0, 200, 0),
                stroke(Look.PLAIN, 200, 0, 200, 100),
                stroke(Look.PLAIN, 200, 100, 0, 100),
                stroke(Look.PLAIN, 0, 100, 0, 0),
                stroke(Look.PLAIN, 0, 0, 200, 100));
        Pieces pieces = pieces(strokes);
        assertThat(pieces.pieces()).hasSize(1);
        assertThat(pieces.pieces().get(0).outer().path().length()).isCloseTo(600, within(1e-9));
        assertThat(pieces.pieces().get(0).inside()).hasSize(1);
    }

    @Test
    void aSecondLineAllRoundIsTheStitchingLineWithItsDistance() {
        Pieces pieces = pieces(List.of(
                stroke(Look.PLAIN, 0, 0, 200, 0, 200, 100, 0, 100, 0, 0),
                stroke(DASHED, 15, 15, 185, 15, 185, 85, 15, 85, 15, 15)));
        assertThat(pieces.pieces()).hasSize(1);
        RawPiece.Beside beside = pieces.pieces().get(0).inner().orElseThrow();
        assertThat(beside.leastMm()).isCloseTo(15, within(1e-9));
        assertThat(beside.mostMm()).isCloseTo(15, within(1e-9));
    }

    @Test
    void aFrameRoundThePageIsNoPieceAndASmallSquareIsForTheScale() {
        Pieces pieces = pieces(List.of(
                stroke(Look.PLAIN, -10, -10, 500, -10, 500, 300, -10, 300, -10, -10),
                stroke(Look.PLAIN, 0, 0, 200, 0, 200, 100, 0, 100, 0, 0),
                stroke(Look.PLAIN, 250, 0, 450, 0, 450, 100, 250, 100, 250, 0),
                stroke(Look.PLAIN, 0, 200, 50, 200, 50, 250, 0, 250, 0, 200)));
        assertThat(pieces.pieces()).hasSize(2);
        assertThat(pieces.squares()).containsExactly(50.0);
        assertThat(pieces.findings()).anyMatch(f -> f.sentence().contains("frame"));
    }

    @Test
    void anOutlineThatDoesNotCloseIsToldWithTheWidthOfItsGap() {
        Pieces pieces = pieces(List.of(stroke(Look.PLAIN, 3, 0, 200, 0, 200, 100, 0, 100, 0, 0)));
        assertThat(pieces.pieces()).isEmpty();
        assertThat(pieces.findings()).anyMatch(f -> f.sentence().contains("3.0 mm apart"));
    }

    @Test
    void aLineDrawnTwiceIsTakenOnce() {
        Stroke line = stroke(Look.PLAIN, 0, 0, 200, 0, 200, 100, 0, 100, 0, 0);
        Pieces pieces = pieces(List.of(line, line));
        assertThat(pieces.pieces()).hasSize(1);
        assertThat(pieces.pieces().get(0).inner()).isEmpty();
    }

    /** Jarmo Kivekaes, half circle skirt, CC0, 2026: the waist is drawn as a half ellipse of 220 by 219 mm, the band 698.9 mm. */
    @Test
    void theHalfCircleSkirtIsTwoPieces() throws IOException {
        Path file = Path.of("..", "data", "patterns", "half-circle-skirt.svg");
        Pieces pieces =
                Pieces.of(SvgDrawing.read("half-circle-skirt.svg", Files.readString(file), OptionalDouble.empty()));
        assertThat(pieces.pieces()).hasSize(2);
        assertThat(pieces.loose()).anyMatch(s -> Math.abs(s.path().length() - 689.6) < 0.1);
        assertThat(pieces.loose()).anyMatch(s -> Math.abs(s.path().length() - 698.9) < 0.1);
    }
}
