package trueseam.checks.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.checks.script.PythonScript;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.drafting.SleevedShells;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.dxf.Dxf;
import trueseam.intake.size.SizeTables;
import trueseam.output.dxf.ApparelDxf;

/** Drafted patterns written as DXF: what ezdxf, an independent general library, reads of them, and what our own reader reads. */
class ReadByLibraryTest {

    /** Within 0.02 mm of the true line, on both sides of a piece, and 0.01 mm of rounding. */
    private static final double SAME_MM = 0.05;

    @TempDir
    static Path folder;

    private static final List<Pattern> PATTERNS = patterns();
    private static Map<String, List<String>> tables;

    private static List<Pattern> patterns() {
        DraftFigure figure = DraftFigure.of(SizeTables.named("misses"), "14");
        DraftEase ease = DraftEase.fitted();
        return List.of(
                Shells.bodice(figure, ease),
                Shells.skirt(figure, ease),
                Shells.dress(figure, ease),
                Shells.trousers(figure, ease),
                PanelledShells.princess(figure, ease, Allowances.inches()),
                PanelledShells.gored(figure, ease, Allowances.inches()),
                PanelledShells.twoPieceSleeve(figure, ease, Allowances.inches()),
                SleevedShells.kimono(figure, ease, Allowances.inches()),
                SleevedShells.raglan(figure, ease, Allowances.inches()));
    }

    private static String file(int pattern) {
        return pattern + ".dxf";
    }

    @BeforeAll
    static void letEzdxfRead() throws IOException, InterruptedException {
        for (int i = 0; i < PATTERNS.size(); i++) {
            Files.writeString(folder.resolve(file(i)), ApparelDxf.write(PATTERNS.get(i)));
        }
        tables = PythonScript.run(ReadByLibraryTest.class, "reread.py", folder);
    }

    private static List<String[]> rows(int pattern, String block, String layer, String kind) {
        return tables.get("read.csv").stream()
                .map(line -> line.split("\\|", -1))
                .filter(row -> row[0].equals(file(pattern))
                        && row[1].equals(block)
                        && row[2].equals(layer)
                        && row[3].equals(kind))
                .toList();
    }

    private static List<String> blocks(int pattern) {
        return tables.get("placed.csv").stream()
                .map(line -> line.split(",", -1))
                .filter(row -> row[0].equals(file(pattern)))
                .map(row -> row[1])
                .toList();
    }

    @Test
    void theLibraryFindsNothingWrong() {
        assertThat(tables.get("audit.csv")).isEmpty();
    }

    @Test
    void everyPieceIsABlockThatIsPlacedOnce() {
        for (int i = 0; i < PATTERNS.size(); i++) {
            assertThat(blocks(i)).hasSameSizeAs(PATTERNS.get(i).pieces()).doesNotHaveDuplicates();
        }
    }

    @Test
    void theLibraryMeasuresTheCuttingAndStitchingLinesThatWereMeant() {
        for (int i = 0; i < PATTERNS.size(); i++) {
            List<String> blocks = blocks(i);
            for (int k = 0; k < blocks.size(); k++) {
                Piece piece = PATTERNS.get(i).pieces().get(k);
                line(rows(i, blocks.get(k), "1", "POLYLINE"), CuttingLine.of(piece), piece.name());
                line(rows(i, blocks.get(k), "14", "POLYLINE"), piece.outline(), piece.name());
            }
        }
    }

    private static void line(List<String[]> rows, trueseam.geometry.Path meant, String what) {
        assertThat(rows).as(what).singleElement().satisfies(row -> {
            assertThat(row[4]).isEqualTo("True");
            double length = meant.length();
            assertThat(Double.parseDouble(row[5])).as(what).isCloseTo(length, within(SAME_MM));
            assertThat(Double.parseDouble(row[6])).as(what).isCloseTo(meant.signedArea(), within(SAME_MM / 2 * length));
            Bounds box = meant.bounds();
            List<Double> sides = List.of(box.minX(), box.minY(), box.maxX(), box.maxY());
            for (int j = 0; j < 4; j++) {
                assertThat(Double.parseDouble(row[7 + j])).as(what).isCloseTo(sides.get(j), within(SAME_MM));
            }
        });
    }

    @Test
    void ourReaderFindsAsManyPointsAndTextsAsTheLibrary() throws IOException {
        for (int i = 0; i < PATTERNS.size(); i++) {
            List<ApparelPiece> pieces = Dxf.read(file(i), Files.readAllBytes(folder.resolve(file(i))), Optional.empty())
                    .apparel()
                    .pieces();
            List<String> blocks = blocks(i);
            for (int k = 0; k < blocks.size(); k++) {
                ApparelPiece piece = pieces.get(k);
                assertThat(piece.block()).isEqualTo(blocks.get(k));
                assertThat(piece.notches()).hasSameSizeAs(rows(i, blocks.get(k), "4", "POINT"));
                assertThat(piece.corners()).hasSameSizeAs(rows(i, blocks.get(k), "2", "POINT"));
                List<String> words = new ArrayList<>();
                for (String layer : List.of("1", "15")) {
                    rows(i, blocks.get(k), layer, "TEXT").forEach(row -> words.add(row[11]));
                }
                assertThat(piece.texts()).containsExactlyInAnyOrderElementsOf(words);
            }
        }
    }
}
