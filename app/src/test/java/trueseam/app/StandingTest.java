package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Earlier patterns of the invented Rosalind, and her next one: the commands as their user gives them, without processes. */
class StandingTest {

    private static final String ROSALIND = Path.of("..", "examples", "rosalind.csv")
            .toAbsolutePath()
            .normalize()
            .toString();

    @TempDir
    Path folder;

    private record Ran(int code, String out, String err) {}

    /** Runs a command line in which {@code R} is Rosalind and {@code @} the folder; {@code _} is a blank. */
    private Ran run(String line) {
        List<String> args = Stream.of(line.split(" "))
                .map(word -> word.equals("R")
                        ? ROSALIND
                        : word.replace("@", folder.toString()).replace('_', ' '))
                .toList();
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
        return new Ran(code, out.toString(), err.toString());
    }

    private void fitted(String size, String options) {
        run("draft skirt --table misses --size " + size + " --out @/" + size + ".svg");
        Ran fit = run("fit --body R --pattern @/" + size + ".svg --out @/" + size + " " + options);
        assertThat(fit.code()).as(fit.err()).isZero();
    }

    /** Rosalind's waist is 31 1/2 in; the waist column of the misses' chart has 28 in at 14, 30 at 16, 32 at 18 (trade facts, 1.2). */
    private void twoSkirtsAnInchLargerThanTheTapeInTheWaist() {
        fitted("14", "--made 2025-10-01 --worn --decide waist_girth=4_1/2_in");
        fitted("16", "--made 2026-09-01 --decide waist_girth=2_1/2_in");
    }

    @Test
    void standingShowsTheProposalForANewSizeWithItsEvidence() throws IOException {
        twoSkirtsAnInchLargerThanTheTapeInTheWaist();
        String line =
                "standing @/14/report.json @/16/report.json --for skirt --table misses --size 18 --today 2026-11-26";
        Ran shown = run(line);
        assertThat(shown.code()).as(shown.err()).isZero();
        assertThat(shown.out())
                .contains("Standing alterations of Rosalind")
                .containsPattern(
                        "waist girth +32 1/2 in +\\+1/2 in +3/8 in +2 to 13 months +2 patterns agree within 0 in"
                                + " \\(misses 14: \\+4 1/2 in, worn, 13 months ago; misses 16: \\+2 1/2 in, 2 months ago\\)");
        JsonNode waist = null;
        for (JsonNode proposal :
                new ObjectMapper().readTree(run(line + " --json").out()).get("proposals")) {
            waist = proposal.get("what").asText().equals("waist girth") ? proposal : waist;
        }
        assertThat(waist.get("weight").asText()).isEqualTo("agreed");
        assertThat(waist.get("amountMm").asDouble()).isCloseTo(12.7, within(0.1));
        assertThat(waist.get("evidence")).hasSize(2);
    }

    @Test
    void aNewFitTakesThemInPlaceOfItsOwnAmountAndItsChartSaysSo() throws IOException {
        twoSkirtsAnInchLargerThanTheTapeInTheWaist();
        run("draft skirt --table misses --size 12 --out @/12.svg");
        Ran fit = run("fit --body R --pattern @/12.svg --standing @/14/report.json,@/16/report.json --out @/new"
                + " --made 2026-11-26");
        assertThat(fit.code()).as(fit.err()).isZero();
        assertThat(fit.out()).containsPattern("Waist .*\\+5 in +alter \\(standing\\)");
        JsonNode report = new ObjectMapper()
                .readTree(Files.readString(folder.resolve("new").resolve("report.json")));
        assertThat(report.get("made").asText()).isEqualTo("2026-11-26");
        assertThat(report.get("holds").asBoolean()).isTrue();
        for (JsonNode need : report.get("needs")) {
            if (need.get("measure").asText().equals("waist girth")) {
                // Size 12 has 26 1/2 in: the tape asks for 5 in, both earlier skirts for 6.
                assertThat(need.get("amountMm").asDouble()).isCloseTo(6 * 25.4, within(0.1));
                assertThat(need.get("reason").asText()).startsWith("Standing: +6 in instead of the +5 in by the tape");
            }
        }
        assertThat(Files.readString(folder.resolve("new").resolve("chart.csv"))).contains("Standing: +6 in");
        assertThat(run("compare --body R --pattern @/12.svg --standing @/14/report.json --standing @/16/report.json")
                        .out())
                .contains("Standing: +6 in instead");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "standing | Missing required parameter",
                "standing @/none.json | There is no file",
                "standing R | not JSON",
                "standing @/14/report.json --size 12 | of which table",
                "standing @/14/report.json --today soon | is not a date",
                "standing @/14/report.json @/bea.json | several people (Bea, Rosalind)",
                "fit --body R --pattern @/14.svg --standing @/bea.json --out @/o | several people",
                "fit --body R --pattern @/14.svg --made soon --out @/o | is not a date"
            })
    void badInputIsOneSentence(String line, String said) throws IOException {
        fitted("14", "");
        String report = Files.readString(folder.resolve("14").resolve("report.json"));
        Files.writeString(folder.resolve("bea.json"), report.replace("\"Rosalind\"", "\"Bea\""));
        Ran bad = run(line);
        assertThat(bad.code()).as(bad.err()).isEqualTo(2);
        assertThat(bad.err()).contains(said).doesNotContain("Exception");
        assertThat(bad.err().strip().lines().count()).isEqualTo(1);
        assertThat(folder.resolve("o")).doesNotExist();
    }
}
