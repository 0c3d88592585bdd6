package trueseam.checks.patternfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.drafting.SleevedShells;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.patternfile.PatternReading;
import trueseam.intake.size.SizeTables;

/** Shells of every size of every table that ships with the program, written and read back. */
class DraftedPatternFileTest {

    static Stream<Named<DraftFigure>> figures() {
        return SizeTables.builtIn().stream().flatMap(table -> table.rows().stream()
                .map(row -> Named.of(table.name() + " " + row.size(), DraftFigure.of(table, row.size()))));
    }

    private static List<Pattern> shells(DraftFigure figure) {
        DraftEase ease = DraftEase.fitted();
        return List.of(
                Shells.bodice(figure, ease),
                Shells.skirt(figure, ease),
                Shells.dress(figure, ease),
                Shells.trousers(figure, ease),
                PanelledShells.princess(figure, ease, Allowances.inches()),
                PanelledShells.gored(figure, ease, Allowances.inches()),
                PanelledShells.twoPieceSleeve(figure, ease, Allowances.inches()),
                PanelledShells.yoke(figure, ease, Allowances.inches()),
                SleevedShells.kimono(figure, ease, Allowances.inches()),
                SleevedShells.raglan(figure, ease, Allowances.inches()));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void everyShellOfEverySizeReadsBackToTheLastBit(DraftFigure figure) {
        for (Pattern shell : shells(figure)) {
            String text = PatternFile.write(shell);
            PatternReading read = PatternFile.read("shell.svg", text);
            assertThat(read.findings()).isEmpty();
            assertThat(read.pattern()).isEqualTo(shell);
            assertThat(text).as("a cutting line for every piece").satisfies(t -> assertThat(
                            t.split("class=\"cutting\"", -1))
                    .hasSize(shell.pieces().size() + 1));
        }
    }

    /** An editor that keeps 8 digits: coordinates to a millionth, ends that no longer meet to the last bit. */
    @ParameterizedTest
    @MethodSource("figures")
    void shellsSavedWithFewerDigitsStillWalkAndMeasure(DraftFigure figure) {
        for (Pattern shell : shells(figure)) {
            Pattern read = PatternFile.read("edited.svg", fewerDigits(PatternFile.write(shell)))
                    .pattern();
            assertThat(read.pieces()).hasSameSizeAs(shell.pieces());
            for (Seam seam : shell.seams()) {
                assertThat(read.mismatchMm(seam) - shell.mismatchMm(seam)).isBetween(-0.01, 0.01);
            }
        }
    }

    private static String fewerDigits(String text) {
        return java.util.regex.Pattern.compile("(?<= d=\")[^\"]*")
                .matcher(text)
                .replaceAll(data -> java.util.regex.Pattern.compile("-?\\d+\\.\\d+")
                        .matcher(data.group())
                        .replaceAll(n -> "%.4f".formatted(Double.parseDouble(n.group()))));
    }

    @Test
    void theFirstShellsAreKeptToBeLookedAt() throws IOException {
        Files.createDirectories(Path.of("target"));
        for (Pattern shell : shells(DraftFigure.of(SizeTables.named("misses"), "14"))) {
            Path file = Path.of("target", shell.pieces().get(0).name() + ".svg");
            Files.writeString(file, PatternFile.write(shell));
            assertThat(PatternFile.read(file.toString(), Files.readString(file)).pattern())
                    .isEqualTo(shell);
        }
    }
}
