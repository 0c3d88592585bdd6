package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Naming the edges of another designer's drawing in a text file, in the process that a user starts. */
class NamesCommandLineTest {

    @TempDir
    private Path folder;

    /** A half circle skirt and its band, drawn by somebody else (data/patterns/README.md): the band is 9.3 mm longer than the waist. */
    @Test
    void aSkirtIsNamedInAnEditorAndItsSeamWalksAsFarAsItIs() throws IOException, InterruptedException {
        Files.copy(Path.of("..", "data", "patterns", "half-circle-skirt.svg"), folder.resolve("skirt.svg"));
        Ran first = Ran.in(folder, "", "bring-in", "skirt.svg", "--out", "first.svg", "--write-names");
        assertThat(first.code()).as(first.err()).isZero();
        assertThat(first.out()).contains("is written to skirt.names.txt");

        // Unchanged it changes nothing.
        Path names = folder.resolve("skirt.names.txt");
        Ran same = Ran.in(folder, "", "bring-in", "skirt.svg", "--out", "same.svg");
        assertThat(same.err()).contains("skirt.names.txt: What it says goes before what is proposed.");
        assertThat(folder.resolve("same.svg")).hasSameTextualContentAs(folder.resolve("first.svg"));

        // What the pieces are, which edge is the waist, and what is sewn to it.
        String text = Files.readString(names);
        assertThat(text)
                .contains("piece 2: waistband")
                .contains("edge: edge 1, 840.0 right 619.0 up to 400.0 right 619.0 up, 689.6 long");
        Files.writeString(
                names,
                text.replace("piece 1: other", "piece 1: skirt front")
                        .replaceFirst("edge: edge 1,", "edge: waist,")
                        .replaceFirst("edge: edge 2,", "edge: side,")
                        .replaceFirst("edge: edge 3,", "edge: hem,")
                        .replaceFirst("edge: edge 4,", "edge: centre front,")
                        .replaceAll("(?m)^seam: .*$", "seam: waist; skirt front / waist; waistband / edge 2"));
        Ran named = Ran.in(folder, "", "bring-in", "skirt.svg", "--out", "named.svg");
        assertThat(named.code()).as(named.err()).isZero();
        assertThat(named.out()).contains("skirt front: ").contains("waistband:");
        Ran walk = Ran.in(folder, "", "walk", "--pattern", "named.svg", "--units", "mm");
        assertThat(walk.out().lines().filter(line -> line.startsWith("waist")))
                .singleElement()
                .asString()
                .matches("waist +690 mm +699 mm +0 mm +\\+9 mm +skirt front, waist to waistband, edge 2");

        Files.writeString(names, "piece 1: skirt\n");
        Ran wrong = Ran.in(folder, "", "bring-in", "skirt.svg", "--out", "wrong.svg");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("skirt.names.txt, line 1: \"skirt\" cannot be read: that is no kind of piece");
        assertThat(folder.resolve("wrong.svg")).doesNotExist();

        Ran lost = Ran.in(folder, "", "bring-in", "skirt.svg", "--out", "lost.svg", "--names", "nowhere.txt");
        assertThat(lost.code()).isEqualTo(2);
        assertThat(lost.err()).contains("nowhere.txt");
    }
}
