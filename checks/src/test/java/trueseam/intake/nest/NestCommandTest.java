package trueseam.intake.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.app.Main;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.nest.NestDrawing.By;
import trueseam.intake.nest.NestDrawing.Named;
import trueseam.intake.patternfile.PatternFile;

/** {@code trueseam bring-in} on a drawing of several sizes. */
class NestCommandTest {

    @TempDir
    private Path folder;

    private Path drawing;
    private Path pattern;

    private record Ran(int code, String out, String err) {}

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(args, new PrintWriter(out), new PrintWriter(err));
        return new Ran(code, out.toString(), err.toString());
    }

    @BeforeEach
    void drawNest() throws IOException {
        drawing = Files.writeString(
                folder.resolve("nest.svg"),
                new NestDrawing(Garment.bodice, List.of("10", "12", "14", "16", "18"), By.LAYER, Named.NOTHING, true, 0)
                        .svg());
        pattern = folder.resolve("pattern.svg");
    }

    @Test
    void withoutASizeItAsksInOneSentenceAndWritesNothing() {
        Ran ran = run("bring-in", drawing.toString(), "--out", pattern.toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("5 sizes").contains("10, 12, 14, 16, 18").contains("--size \"14\"");
        assertThat(ran.err().strip()).doesNotContain("\n");
        assertThat(pattern).doesNotExist();
    }

    @Test
    void theSizesAreListedWithTheirEvidence() throws IOException {
        Ran ran = run("bring-in", drawing.toString(), "--sizes");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("layers named by size").contains("14: layer \"Size 14\"");
        Ran json = run("bring-in", drawing.toString(), "--sizes", "--json");
        var sizes = new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(json.out())
                .at("/sizes");
        assertThat(sizes).hasSize(5);
        assertThat(sizes.get(2).at("/size").asText()).isEqualTo("14");
    }

    @Test
    void theChosenSizeIsThePatternsSize() throws IOException {
        Ran ran = run("bring-in", drawing.toString(), "--size", "14", "--out", pattern.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        Pattern read =
                PatternFile.read("pattern.svg", Files.readString(pattern)).pattern();
        assertThat(read.size()).isEqualTo("14");
        assertThat(read.pieces()).hasSize(3);
    }

    @Test
    void aPatternDrawnAcrossTheSizesIsFittedWithEveryProofHolding() throws IOException {
        Ran ran = run(
                "bring-in",
                drawing.toString(),
                "--size",
                "bust 14, waist 16",
                "--table",
                "misses",
                "--out",
                pattern.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(PatternFile.read("pattern.svg", Files.readString(pattern))
                        .pattern()
                        .size())
                .isEqualTo("bust 14, waist 16");
        Ran fit = run(
                "fit",
                "--body",
                Path.of("..", "examples", "rosalind.csv").toString(),
                "--pattern",
                pattern.toString(),
                "--out",
                folder.resolve("fitted").toString());
        assertThat(fit.code()).as(fit.err() + fit.out()).isZero();
        assertThat(fit.out()).contains("proofs hold");
    }

    @Test
    void aDrawingOfOneSizeCannotBeDrawnAcross() throws IOException {
        Path single = Files.writeString(
                folder.resolve("single.svg"),
                new NestDrawing(Garment.skirt, List.of("12"), By.NESTING, Named.NOTHING, false, 15).svg());
        Ran ran = run("bring-in", single.toString(), "--size", "waist 12, hip 14", "--out", pattern.toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("holds one size only");
        assertThat(run("bring-in", single.toString(), "--sizes").out()).contains("one size");
    }
}
