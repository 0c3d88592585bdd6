package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs the program as its user does: a process of its own. */
class CommandLineTest {

    private static final Path ROSALIND =
            Path.of("..", "examples", "rosalind.csv").toAbsolutePath().normalize();
    private static final Path SURVEY = Path.of("..", "data", "bodies", "ansur2-female.csv")
            .toAbsolutePath()
            .normalize();

    @TempDir
    Path folder;

    private Ran run(String... args) throws IOException, InterruptedException {
        return Ran.in(folder, "", args);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString())
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bodice",
                "skirt",
                "trousers",
                "dress",
                "princess",
                "gored",
                "two-piece-sleeve",
                "yoke",
                "kimono",
                "raglan"
            })
    void aBodyAndADraftedPatternBecomeProvenPrintedAlteredPieces(String garment) throws Exception {
        assertThat(run("draft", garment, "--table", "misses", "--size", "14", "--out", "pattern.svg")
                        .code())
                .isZero();
        Ran fit = run("fit", "--body", ROSALIND.toString(), "--pattern", "pattern.svg", "--out", "fitted");
        assertThat(fit.err()).isEmpty();
        assertThat(fit.code()).isZero();
        assertThat(files())
                .contains(
                        "fitted/altered.svg",
                        "fitted/chart.csv",
                        "fitted/chart.pdf",
                        "fitted/ease.csv",
                        "fitted/ease.svg",
                        "fitted/print.pdf",
                        "fitted/report.json",
                        "fitted/steps.pdf",
                        "fitted/strips.pdf");
        assertThat(fit.out()).contains("proofs hold").contains("trial garment");
        assertThat(run("walk", "--pattern", "fitted/altered.svg").out()).contains("walks");
    }

    @Test
    void theSizeIsChosenByTheUpperChestWhenTheBustIsTwoInchesLarger() throws Exception {
        // Principles of Pattern Alteration, Texas Cooperative Extension E-372, 2006: two inches or more, take the
        // high-bust size.
        Ran size = run("size", "--body", ROSALIND.toString(), "--table", "misses", "--json");
        JsonNode json = new ObjectMapper().readTree(size.out());
        assertThat(json.get("size").asText()).isEqualTo("14");
        assertThat(json.get("by").asText()).isEqualTo("upper chest girth");
    }

    @Test
    void aSurveyedPersonIsFittedByHerNumber() throws Exception {
        run("draft", "bodice", "--table", "misses", "--size", "16", "--out", "pattern.svg");
        Ran fit = run(
                "fit", "--body", SURVEY.toString(), "--row", "10037", "--pattern", "pattern.svg", "--out", "fitted");
        assertThat(fit.code()).isZero();
        assertThat(Files.readString(folder.resolve("fitted/chart.csv"))).contains("survey");
    }

    @Test
    void aPaperPatternIsFittedFromItsTypedFlatMeasures() throws Exception {
        Ran fit = run(
                "fit",
                "--body",
                ROSALIND.toString(),
                "--paper-only",
                "skirt",
                "--flat",
                "hip girth=41 in",
                "--flat",
                "waist girth=30 in",
                "--out",
                "fitted");
        assertThat(fit.err()).isEmpty();
        assertThat(fit.code()).isZero();
        assertThat(files()).contains("fitted/steps.pdf", "fitted/chart.pdf");
    }

    @Test
    void anOwnDecisionGoesBeforeEveryRule() throws Exception {
        run("draft", "skirt", "--table", "misses", "--size", "14", "--out", "pattern.svg");
        Ran compare = run(
                "compare", "--body", ROSALIND.toString(), "--pattern", "pattern.svg", "--decide", "hip girth=leave");
        assertThat(compare.out()).contains("Left alone, as you decided.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fit --body nobody.csv --pattern p.svg --out o | There is no file nobody.csv",
                "size --table misses | No body was named",
                "draft bodice --table misses --size 15 --out x.svg | 15",
                "draft bodice --table missses --size 14 --out x.svg | missses",
                "measure --pattern nothing.svg | There is no file nothing.svg",
                "draft jacket --table misses --size 14 --out x.svg | jacket",
                "print --pattern | --pattern"
            })
    void badInputIsOneSentenceExitCodeTwoAndNothingWritten(String line, String said) throws Exception {
        Ran bad = run(line.strip().split(" "));
        assertThat(bad.code()).isEqualTo(2);
        assertThat(bad.err()).contains(said.strip());
        assertThat(bad.err().lines().count()).isEqualTo(1);
        assertThat(bad.err()).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(files()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"size", "draft", "measure", "walk", "compare", "fit", "print"})
    void everyCommandHelpsWithAnExample(String command) throws Exception {
        Ran help = run(command, "--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("Example").contains("trueseam " + command);
    }

    @Test
    void smallPiecesAreDraftedAndFollowWhatTheyAreSewnTo() throws Exception {
        assertThat(run(
                                "draft",
                                "skirt",
                                "--table",
                                "misses",
                                "--size",
                                "14",
                                "--with",
                                "waistband,lining",
                                "--out",
                                "skirt.svg")
                        .out())
                .contains("waistband", "skirt front lining");
        Ran fit = run("fit", "--body", ROSALIND.toString(), "--pattern", "skirt.svg", "--out", "fitted");
        assertThat(fit.code()).as(fit.err()).isZero();
        assertThat(fit.out()).contains("proofs hold");
        Ran refused = run("draft", "skirt", "--table", "misses", "--size", "14", "--with", "cuffs", "--out", "x.svg");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("A cuff needs a wrist to be sewn to");
        assertThat(Files.exists(folder.resolve("x.svg"))).isFalse();
    }

    @Test
    void anAlterationAskedForByNameIsCarriedOutOnOneSideAndListed() throws Exception {
        run("draft", "bodice", "--table", "misses", "--size", "14", "--out", "bodice.svg");
        Ran fit = run(
                "fit",
                "--body",
                ROSALIND.toString(),
                "--pattern",
                "bodice.svg",
                "--alter",
                "full bust=1 in",
                "--alter",
                "sloping shoulder=3/8 in, left",
                "--out",
                "fitted");
        assertThat(fit.code()).as(fit.err()).isZero();
        assertThat(fit.out()).contains("proofs hold", "counted once");
        assertThat(Files.readString(folder.resolve("fitted/altered.svg"))).contains("bodice front, left");
        assertThat(run("alterations").out()).contains("sloping shoulder", "full bust");
        assertThat(run("alterations", "full bust").out()).contains("Stays:", "Source:");
        Ran unknown =
                run("fit", "--body", ROSALIND.toString(), "--pattern", "bodice.svg", "--alter", "tall", "--out", "y");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("there is no alteration \"tall\"");
    }

    @ParameterizedTest
    @CsvSource({"kimono, kimono length=3/4 in", "kimono, neck=1/2 in", "raglan, raglan length=-1/2 in"})
    void aSleeveThatIsNotSetInIsAlteredByName(String garment, String asked) throws Exception {
        run("draft", garment, "--table", "misses", "--size", "14", "--out", "pattern.svg");
        Ran fit = run(
                "fit", "--body", ROSALIND.toString(), "--pattern", "pattern.svg", "--alter", asked, "--out", "fitted");
        assertThat(fit.code()).as(fit.err()).isZero();
        assertThat(fit.out()).contains("proofs hold");
    }

    @ParameterizedTest
    @CsvSource({"kimono, cap ease=1/2 in", "kimono, across back=1/2 in", "raglan, shoulder width=1/4 in"})
    void whatASleeveThatIsNotSetInCannotTakeSaysWhatToDoInstead(String garment, String asked) throws Exception {
        run("draft", garment, "--table", "misses", "--size", "14", "--out", "pattern.svg");
        Ran fit = run(
                "fit", "--body", ROSALIND.toString(), "--pattern", "pattern.svg", "--alter", asked, "--out", "fitted");
        assertThat(fit.code()).isEqualTo(2);
        assertThat(fit.err()).contains("is written for").contains("pin ");
        assertThat(files()).doesNotContain("fitted/altered.svg");
    }

    @Test
    void aLengthThatAnotherAlterationHasBroughtAlreadyIsNotAddedAsNothing() throws Exception {
        // Rosalind's back waist is 3/4 in longer than size 14: here "length above the bust" gives all of it.
        run("draft", "two-piece-sleeve", "--table", "misses", "--size", "14", "--out", "two.svg");
        Ran fit = run(
                "fit",
                "--body",
                ROSALIND.toString(),
                "--pattern",
                "two.svg",
                "--alter",
                "length above the bust=3/4 in",
                "--out",
                "fitted");
        assertThat(fit.code()).as(fit.err()).isZero();
        assertThat(fit.out()).contains("proofs hold");
    }
}
