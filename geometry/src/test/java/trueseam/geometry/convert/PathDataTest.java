package trueseam.geometry.convert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.Drawn;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

class PathDataTest {

    private static Path only(String data) {
        List<Subpath> lines = PathData.read(data);
        assertThat(lines).hasSize(1);
        return lines.get(0).path();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M 1 2 L 4 6            | M 1 2 L 4 6",
                "m1,2 3,4               | M 1 2 L 4 6",
                "M1 2 4 6 7 8           | M 1 2 L 4 6 L 7 8",
                "M0 0H10V5h-3v1         | M 0 0 L 10 0 L 10 5 L 7 5 L 7 6",
                "M0 0h1 2 3             | M 0 0 L 1 0 L 3 0 L 6 0",
                "M0-1.5.5.25-3e1+4E+0   | M 0 -1.5 L 0.5 0.25 L -30 4",
                "M0 0C1 1 2 1 3 0S5-1 6 0 | M 0 0 C 1 1 2 1 3 0 C 4 -1 5 -1 6 0",
                "M0 0c1 1 2 1 3 0s2-1 3 0 | M 0 0 C 1 1 2 1 3 0 C 4 -1 5 -1 6 0",
                "M0 0S2 1 3 0           | M 0 0 C 0 0 2 1 3 0",
                "M0 0L10 0L10 10Z       | M 0 0 L 10 0 L 10 10 L 0 0",
                "M0 0L10 0L10 10L0 0Z   | M 0 0 L 10 0 L 10 10 L 0 0",
            })
    void theSameLineInAnotherSpelling(String data, String absolute) {
        assertThat(only(data)).isEqualTo(Drawn.path(absolute));
    }

    @Test
    void quadraticsAreMirroredOnlyAfterQuadratics() {
        Path wave = only("M0 0Q5 10 10 0T20 0t10 0");
        assertThat(wave.pointAt(wave.length() / 6).distanceTo(new Point(5, 5))).isCloseTo(0, within(1e-9));
        assertThat(wave.pointAt(wave.length() / 2).distanceTo(new Point(15, -5)))
                .isCloseTo(0, within(1e-9));
        assertThat(only("M0 0L3 0T10 0").length()).isCloseTo(10, within(1e-9));
    }

    @Test
    void flagsOfAnArcNeedNothingBetween() {
        Path spaced = only("M 10 0 A 10 10 0 1 0 0 10");
        assertThat(only("M10 0A10 10 0 100 10")).isEqualTo(spaced);
        assertThat(only("M10 0a10,10,0,10-10,10")).isEqualTo(spaced);
        assertThat(spaced.length()).isCloseTo(15 * Math.PI, within(1e-6));
        assertThat(only("M0 0A0 5 0 0 1 10 0")).isEqualTo(Drawn.path("M 0 0 L 10 0"));
        assertThat(PathData.read("M5 5A3 3 0 0 1 5 5")).isEmpty();
    }

    @Test
    void subpathsBeginWhereTheLastWasClosed() {
        List<Subpath> lines = PathData.read("M10 10h5v5z l-5 0 m 1 1 z M 3 3 m1 1 l1 1");
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0).closed()).isTrue();
        assertThat(lines.get(0).path().isClosed()).isTrue();
        assertThat(lines.get(1).path()).isEqualTo(Drawn.path("M 10 10 L 5 10"));
        assertThat(lines.get(1).closed()).isFalse();
        assertThat(lines.get(2).path()).isEqualTo(Drawn.path("M 4 4 L 5 5"));
        assertThat(PathData.read("  \n")).isEmpty();
        assertThat(PathData.read("M 3 3")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "L 1 1             | 1  | begins with M",
                "M 1e400 0         | 3  | 1e400 is too large",
                "M 0 0 L 5 -1e999  | 11 | -1e999 is too large",
                "M 0 0 L NaN 1     | 9  | \"N\"; expected a number",
                "M 0 0 L Infinity 1 | 9 | expected a number",
                "M 0 0 L 2000000 1 | 7  | off the paper",
                "M 0 0 L 1,,2      | 11 | after a comma",
                "M 0 0 L 1 2,      | 13 | the text ends after a comma",
                "M 0 0 L 1         | 10 | the text ends",
                "M 0               | 4  | the text ends",
                "M 0 0 X 4 4       | 7  | \"X\"; expected one of the commands",
                "M 0 0 Z 4 4       | 9  | expected one of the commands",
                "M 0 0 L 1 2e      | 13 | exponent",
                "M 0 0 L . 2       | 10 | expected a number",
                "M 0 0 L - 2       | 10 | expected a number",
                "M 0 0 A 1 1 0 2 0 5 5 | 15 | expected a flag",
                "M 0 0 A 1 1 0 01  | 17 | the text ends",
                "; M 0 0           | 1  | expected one of the commands",
            })
    void refusalsNameTheCharacter(String data, int character, String why) {
        PathDataException no = catchThrowableOfType(PathDataException.class, () -> PathData.read(data));
        assertThat(no).as(data).isNotNull();
        assertThat(no).hasMessageContaining(why);
        assertThat(no.character()).isEqualTo(character);
    }

    @Test
    void endlessTextIsRefused() {
        String digits = "M 0 0 L " + "9".repeat(1000) + " 0";
        assertThatThrownBy(() -> PathData.read(digits)).isInstanceOf(PathDataException.class);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            String strokes = "M 0 0" + " 1 1 2 2".repeat(500_001);
            assertThatThrownBy(() -> PathData.read(strokes))
                    .isInstanceOf(PathDataException.class)
                    .hasMessageContaining("more than 1000000 strokes");
        });
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsWrittenReadsBackToTheSameNumbers(int seed) {
        Random random = new Random(seed);
        Path path = Path.of(Drawn.cubic(random));
        for (int i = 0; i < 5; i++) {
            Point from = path.end();
            double scale = Math.pow(10, 5 - 12 * random.nextDouble());
            Point to = from.plus(new Vec(scale * random.nextGaussian(), scale * random.nextGaussian()));
            path = path.then(
                    random.nextBoolean()
                            ? Path.through(from, to)
                            : Path.of(new trueseam.geometry.Cubic(from, Drawn.anywhere(random, scale), to, to)));
        }
        assertThat(PathData.read(PathData.write(new Subpath(path, false)))).containsExactly(new Subpath(path, false));
        assertThat(only(path.toString())).isEqualTo(path);
        Subpath closed = new Subpath(path.then(Path.through(path.end(), path.start())), true);
        List<Subpath> both = List.of(closed, new Subpath(path, false));
        assertThat(PathData.read(PathData.write(both))).isEqualTo(both);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "0.1, 0.1",
        "15.875, 15.875",
        "100000, 100000",
        "1e-9, 1E-9",
        "2e-3, 0.002",
        "-37.5, -37.5"
    })
    void numbersAreWrittenWithTheFewestDigits(double value, String text) {
        assertThat(PathData.number(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyNumberReadsBack(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 100; i++) {
            double value = Math.scalb(random.nextDouble() - 0.5, random.nextInt(60) - 40);
            assertThat(Double.parseDouble(PathData.number(value))).isEqualTo(value);
        }
    }

    @Test
    void forTheEyeALineIsWrittenDownwardsToAThousandthAndNoFiner() {
        Path path = Path.of(
                new Line(new Point(0, 0), new Point(10.12345, -3.5)),
                new Cubic(
                        new Point(10.12345, -3.5),
                        new Point(-0.0004, 0.05),
                        new Point(0.1, 20),
                        new Point(-1, 2.0307)));
        assertThat(PathData.drawn(path)).isEqualTo("M0 0L10.123 3.5C0 -0.05 0.1 -20 -1 -2.031");
        Path read = Affine.UPSIDE_DOWN.apply(
                PathData.read(PathData.drawn(path)).get(0).path());
        for (int i = 0; i <= 10; i++) {
            Point was = path.pointAt(path.length() * i / 10);
            assertThat(read.nearest(was).point().distanceTo(was)).isLessThan(0.001);
        }
    }
}
