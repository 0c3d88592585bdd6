package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The trial garment from the command line, in a process of its own: the reading, the dialogue, and the next fit. */
class TrialCommandLineTest {

    private static final Path ROSALIND =
            Path.of("..", "examples", "rosalind.csv").toAbsolutePath().normalize();
    private static final Path SITTING =
            Path.of("..", "examples", "first-sitting.csv").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    private Ran run(String typed, String... args) throws IOException, InterruptedException {
        return Ran.in(folder, typed, args);
    }

    private void draft(String garment) throws IOException, InterruptedException {
        assertThat(run("", "draft", garment, "--table", "misses", "--size", "14", "--out", garment + ".svg")
                        .code())
                .isZero();
    }

    @Test
    void theDialogueEndsAtOneCauseAndItsChange() throws Exception {
        draft("skirt");
        // Below the band behind; across; not sure which of them; pulled down, the folds stay [web:sway1].
        Ran asked = run("skirt-band-back\nnonsense\nacross\n0\n2\n", "trial", "--pattern", "skirt.svg", "--ask");

        assertThat(asked.err()).isEmpty();
        assertThat(asked.code()).isZero();
        assertThat(asked.out())
                .contains("Where are the folds?")
                .contains("\"nonsense\" is no answer")
                .contains("Pull the skirt (or the trousers) down at the centre back.")
                .containsSubsequence("1. The back is hollow at the waist", "Change: sway-back of a skirt")
                .contains("(tight-hip): spoken against");
    }

    @Test
    void theReadingIsExportedAsJson() throws Exception {
        Ran ran = run("", "trial", "--answer", "seen=2", "--answer", "dart-points=above", "--json");
        JsonNode json = new ObjectMapper().readTree(ran.out());

        assertThat(json.get("causes").get(0).get("cause").asText()).isEqualTo("dart-high");
        assertThat(json.get("causes")
                        .get(0)
                        .get("changes")
                        .get(0)
                        .get("alteration")
                        .asText())
                .isEqualTo("bust point height");
        assertThat(json.has("next")).isFalse();
    }

    @Test
    void whatWasPinnedComesOnTopInTheNextFit() throws Exception {
        draft("bodice");
        Ran first = run("", "fit", "--body", ROSALIND.toString(), "--pattern", "bodice.svg", "--out", "one", "--json");
        Ran next = run(
                "",
                "fit",
                "--body",
                ROSALIND.toString(),
                "--pattern",
                "bodice.svg",
                "--pinned",
                SITTING.toString(),
                "--out",
                "two",
                "--json");
        assertThat(next.err()).isEmpty();
        assertThat(next.code()).isZero();
        double before = after(first, "across back width");
        // 1/8 in deep on each side is 1/2 in less between the armholes.
        assertThat(after(next, "across back width"))
                .isCloseTo(before - 12.7, org.assertj.core.api.Assertions.within(0.5));
        assertThat(after(next, "bust girth"))
                .isCloseTo(after(first, "bust girth"), org.assertj.core.api.Assertions.within(0.2));
        assertThat(folder.resolve("two/print.pdf")).exists();
    }

    private static double after(Ran ran, String measure) throws IOException {
        for (JsonNode line : new ObjectMapper().readTree(ran.out()).get("needs")) {
            if (line.get("measure").asText().equals(measure)) {
                return line.get("afterMm").asDouble();
            }
        }
        throw new AssertionError("no line " + measure);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "11,sway-back,,,,,| p.csv, line 2, pinned: Give what was pinned",
                "11,sway-back,,1/4,fold depth,behind,| p.csv, line 2, side: The side \"behind\"",
                "999,,,1/4,,,| p.csv, line 2, seen: Nothing that is seen",
            })
    void aLineThatCannotBeReadIsOneSentenceWithItsPlace(String line, String sentence) throws Exception {
        draft("skirt");
        Files.writeString(folder.resolve("p.csv"), "seen,cause,alteration,pinned,as,side,note\n" + line + "\n");
        Ran ran = run(
                "",
                "fit",
                "--body",
                ROSALIND.toString(),
                "--pattern",
                "skirt.svg",
                "--pinned",
                "p.csv",
                "--out",
                "fitted");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(sentence).doesNotContain("Exception");
        assertThat(folder.resolve("fitted")).doesNotExist();
    }
}
