package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pattern printed over pages and brought in again, by the program as its user runs it. */
class TiledPdfTest {

    @TempDir
    Path folder;

    private Ran run(String... args) throws Exception {
        return Ran.in(folder, "", args);
    }

    @Test
    void aPrintOverPagesIsPutTogetherNamedAndFits() throws Exception {
        run("draft", "skirt", "--table", "misses", "--size", "14", "--out", "skirt.svg");
        assertThat(run("print", "--pattern", "skirt.svg", "--paper", "a4", "--out", "skirt.pdf")
                        .code())
                .isZero();
        Ran brought = run("bring-in", "skirt.pdf", "--out", "again.svg");
        assertThat(brought.code()).isZero();
        assertThat(brought.err())
                .contains("page 1: Left out:")
                .contains("are put together as")
                .contains("by labels of row and column")
                .contains("\"50 mm\" is printed at a square that is drawn 50.00 by 50.00 mm");
        assertThat(brought.out()).contains("skirt front: ");
        assertThat(Files.readString(folder.resolve("again.svg"))).contains("skirt front");
        assertThat(run("walk", "--pattern", "again.svg").code()).isZero();
    }

    @Test
    void whatIsSaidOfPagesAndSquaresIsTakenOrRefusedInOneSentence() throws Exception {
        run("draft", "skirt", "--table", "misses", "--size", "14", "--out", "skirt.svg");
        run("print", "--pattern", "skirt.svg", "--paper", "letter", "--out", "skirt.pdf");
        assertThat(run("bring-in", "skirt.pdf", "--test-square", "2 in", "--out", "again.svg")
                        .err())
                .contains("Scaled as you said")
                .contains("100.00 % as wide");
        for (String[] bad : new String[][] {
            {"--tiles", "two rows", "cannot be read"},
            {"--tiles", "1x1", "more than 1 x 1"},
            {"--test-square", "20 cm", "no printer does"},
            {"--page", "99", "no page 99"}
        }) {
            Ran refused = run("bring-in", "skirt.pdf", bad[0], bad[1], "--out", "no.svg");
            assertThat(refused.code()).isEqualTo(2);
            assertThat(refused.err().strip()).contains(bad[2]).doesNotContain("\n");
            assertThat(folder.resolve("no.svg")).doesNotExist();
        }
    }
}
