package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class handout, printed as its teacher does it: in a process of its own. Rosalind is invented. */
class HandoutCommandTest {

    private static final String ROSALIND = Path.of("..", "examples", "rosalind.csv")
            .toAbsolutePath()
            .normalize()
            .toString();

    @TempDir
    private Path folder;

    @Test
    void theHandoutOfASkirtIsPrintedForTheWholeClass() throws IOException, InterruptedException {
        assertThat(Ran.in(folder, "", "draft", "skirt", "--table", "misses", "--size", "14", "--out", "s.svg")
                        .code())
                .isZero();
        Ran ran = Ran.in(
                folder, "", "handout", "--body", ROSALIND, "--pattern", "s.svg", "--students", "2", "--out", "h.pdf");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("practice sheets for 2 students");
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(folder.resolve("h.pdf")))) {
            assertThat(pdf.getNumberOfPages()).isGreaterThan(10);
        }
    }

    @Test
    void whatCannotBeHandedOutIsSaidInOneSentence() throws IOException, InterruptedException {
        Ran none =
                Ran.in(folder, "", "handout", "--project", "Skirt", "--data", ".", "--students", "2", "--out", "h.pdf");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("There is no record book at");
        Ran nobody = Ran.in(folder, "", "handout", "--body", ROSALIND, "--students", "0", "--out", "h.pdf");
        assertThat(nobody.code()).isEqualTo(2);
        assertThat(nobody.err()).contains("--students 0 is no class");
        assertThat(folder.resolve("h.pdf")).doesNotExist();
    }
}
