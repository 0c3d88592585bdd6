package trueseam.checks.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.checks.script.PythonScript;
import trueseam.geometry.Bounds;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.dxf.DrawingUnit;
import trueseam.intake.dxf.Dxf;
import trueseam.intake.dxf.DxfReading;

/** Files that ezdxf, an independent general DXF library, wrote in seven releases, against what it measures on them. */
class WrittenByLibraryTest {

    /** Chords of ezdxf lie within 1e-4 mm of an arc, and of a spline there are 1,500 (its corner is one of their ends). */
    private static final double SAME_MM = 2e-3;

    /** Chords of a spline are shorter than it, here and there. */
    private static final double FOLLOWED_MM = 0.02;

    @TempDir
    static Path folder;

    private static List<String> expected;

    @BeforeAll
    static void letEzdxfWrite() throws IOException, InterruptedException {
        expected = PythonScript.run(WrittenByLibraryTest.class, "samples.py", folder)
                .get("expected.csv");
    }

    private static DxfReading read(String release) throws IOException {
        return Dxf.read(release, Files.readAllBytes(folder.resolve(release + ".dxf")), Optional.empty());
    }

    private static Stream<String[]> rows(String release) {
        return expected.stream().map(line -> line.split(",", -1)).filter(row -> row[0].equals(release + ".dxf"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"})
    void everyLineHasTheLengthAndTheBoundsThatTheLibraryMeasures(String release) throws IOException {
        List<Stroke> strokes = read(release).drawing().strokes();
        List<String[]> rows = rows(release).toList();
        assertThat(strokes).hasSameSizeAs(rows).hasSizeGreaterThan(20);
        for (int i = 0; i < rows.size(); i++) {
            String[] row = rows.get(i);
            Stroke stroke = strokes.get(i);
            double tolerance = row[2].equals("SPLINE") ? FOLLOWED_MM : SAME_MM;
            String what = String.join(",", row);
            assertThat(stroke.path().length()).as(what).isCloseTo(Double.parseDouble(row[5]), within(tolerance));
            Bounds box = stroke.path().bounds();
            assertThat(List.of(box.minX(), box.minY(), box.maxX(), box.maxY()))
                    .as(what)
                    .zipSatisfy(Stream.of(row).skip(6).map(Double::valueOf).toList(), (ours, theirs) -> assertThat(ours)
                            .isCloseTo(theirs, within(tolerance)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"R12", "R2000", "R2018"})
    void layersAndColoursAreThoseOfTheLibrary(String release) throws IOException {
        List<Stroke> strokes = read(release).drawing().strokes();
        List<String[]> rows = rows(release).toList();
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i)[3].isEmpty()) {
                assertThat(strokes.get(i).layer()).isEqualTo(rows.get(i)[3]);
                assertThat(strokes.get(i).look().colour()).isEqualTo(rows.get(i)[4]);
            }
        }
    }

    @Test
    void blocksAreNamedAndTakeTheLayerColourAndDashesOfWhatPlacesThem() throws IOException {
        List<Stroke> strokes = read("R2000").drawing().strokes();
        Stroke arc = strokes.stream()
                .filter(s -> s.layer().equals("POCKET/size 12"))
                .skip(1)
                .findFirst()
                .orElseThrow();
        assertThat(arc.look().colour()).isEqualTo("#007f00");
        assertThat(strokes.stream().map(Stroke::layer)).contains("PAIR/POCKET/size 10", "PAIR/POCKET/size 12");
        Stroke dashed = strokes.stream()
                .filter(s -> s.layer().equals("size 12"))
                .findFirst()
                .orElseThrow();
        assertThat(dashed.look().dashMm()).hasSize(2).allSatisfy(mm -> assertThat(mm)
                .isPositive());
    }

    @Test
    void theUnitIsWhatTheHeaderSays() throws IOException {
        assertThat(read("R2007").unit().mm()).isEqualTo(25.4);
        assertThat(read("R2018").unit().mm()).isEqualTo(0.001);
        assertThat(read("R12").unit().basis()).isEqualTo(DrawingUnit.Basis.ASSUMED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"R12", "R2004", "R2018"})
    void wordsKeepTheirLettersAndPlace(String release) throws IOException {
        assertThat(read(release).drawing().captions()).singleElement().satisfies(caption -> {
            Caption c = caption;
            assertThat(c.text()).isEqualTo("Front \u00e9 10");
            assertThat(c.heightMm()).isCloseTo(8, within(1e-9));
            assertThat(c.at().x()).isCloseTo(3, within(1e-9));
        });
    }

    @Test
    void onlySplinesThatAreNoCubicsAreFollowedByChordsAndThatIsSaid() throws IOException {
        assertThat(read("R2010").drawing().findings())
                .filteredOn(f -> f.sentence().contains("spline"))
                .singleElement()
                .satisfies(f -> assertThat(f.sentence()).startsWith("2 spline(s)"));
    }
}
