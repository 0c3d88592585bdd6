package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What every command promises: JSON on request, lengths in the user's units, one sentence for bad input. Without processes. */
class EveryCommandTest {

    private static final Path ROSALIND =
            Path.of("..", "examples", "rosalind.csv").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    private record Ran(int code, String out, String err) {}

    /** Runs a command line in which {@code R} is Rosalind, {@code P} a skirt, {@code B} a bodice and {@code @} the folder. */
    private Ran run(String line) {
        List<String> args = new ArrayList<>();
        for (String word : line.strip().split(" ")) {
            String arg =
                    switch (word) {
                        case "R" -> ROSALIND.toString();
                        case "P" -> shell("skirt", "14").toString();
                        case "B" -> shell("bodice", "16").toString();
                        default -> word.replace("@", folder.toString()).replace('_', ' ');
                    };
            args.add(arg);
        }
        return ran(args);
    }

    private static Ran ran(List<String> args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
        return new Ran(code, out.toString(), err.toString());
    }

    private Path shell(String garment, String size) {
        Path file = folder.resolve(garment + ".svg");
        if (!Files.exists(file)) {
            Ran drafted = ran(List.of("draft", garment, "--table", "misses", "--size", size, "--out", file.toString()));
            assertThat(drafted.code()).as(drafted.err()).isZero();
        }
        return file;
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void everyCommandIsTakenUpAloneByTheNameThatTheHelpTells() {
        List<Class<?>> all = Main.commands(new String[] {});
        assertThat(all).hasSizeGreaterThan(12);
        for (Class<?> command : all) {
            String name = command.getAnnotation(CommandLine.Command.class).name();
            assertThat(Main.commands(new String[] {name, "--help"})).containsExactly(command);
            assertThat(ran(List.of("--help")).out()).contains("\n  " + name + " ");
        }
        assertThat(Main.commands(new String[] {"fti"})).isEqualTo(all); // all of them, to say which is meant
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "size --body R --table misses --json | size",
                "draft trousers --table misses --size 12 --out @/t.svg --json | pieces",
                "measure --pattern P --json | measure",
                "walk --pattern P --json | leftOverMm",
                "compare --body R --pattern P --json | needs",
                "fit --body R --pattern P --out @/fitted --json | proofs",
                "print --pattern P --out @/p.pdf --json | file"
            })
    void everyCommandPrintsJsonAndNothingElse(String line, String field) throws IOException {
        Ran ran = run(line);
        assertThat(ran.code()).as(ran.err()).isZero();
        JsonNode json = new ObjectMapper().readTree(ran.out());
        assertThat(json.isArray() ? json.get(0).has(field) : json.has(field))
                .as(ran.out())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        // The chart's bust of size 14 is 36 in; the skirt's waist 28 in and 1 of ease; Rosalind's own waist 31 1/2 in.
        "size --body R --table misses, 36 in, 91.4 cm, 914 mm",
        "measure --pattern P, 29 in, 73.7 cm, 737 mm",
        "walk --pattern P, in , cm , mm ",
        "compare --body R --pattern P, 31 1/2 in, 80 cm, 800 mm",
        "fit --body R --pattern P --out @/fitted, 31 1/2 in, 80 cm, 800 mm"
    })
    void everyCommandShowsLengthsInTheUnitsAskedFor(
            String line, String inches, String centimetres, String millimetres) {
        assertThat(run(line + " --units in").out()).contains(inches).doesNotContain(" cm");
        assertThat(run(line + " --units cm").out()).contains(centimetres).doesNotContainPattern("\\d in\\b");
        assertThat(run(line + " --units mm").out()).contains(millimetres).doesNotContainPattern("\\d (in|cm)\\b");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "size --body R --table misses --for skirt --between-sizes next-larger | size 18 is taken",
                "compare --body R --pattern P --least-ease hip=encyclopedia | EASE-W, its first source, 3",
                "compare --body R --pattern P --hip-line seven | It lies 7 in down the side",
                "draft trousers --table misses --size 12 --trouser-hem safe --out @/t.svg | Drafted trousers",
                "draft bodice --table misses --size 12 --ease bust_girth=8_cm --ease-shares 20/80/0 --out @/b.svg | Drafted bodice",
                "draft bodice --table misses --size 12 --cap-ease 3/4_in --out @/c.svg | Drafted bodice",
                "fit --body R --pattern P --plaid 4_1/4_in --stacked 2 --out @/f | buy 8 1/2 in more",
                "choices | hip=WORD"
            })
    void whatHandbooksDisagreeAboutIsChosenAndSaid(String line, String said) {
        Ran ran = run(line);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "compare --body R --pattern P --least-ease hip=aunt | write one of table",
                "compare --body R --pattern P --least-ease knee=table | bust, waist or hip",
                "compare --body R --pattern P --hip-line low | write one of as-drawn",
                "size --body R --table misses --between-sizes huge | write one of nearest",
                "size --body R --shirt | neck girth",
                "draft bodice --table misses --size 12 --ease-shares 20/90/0 --out @/b.svg | 20/80/0",
                "fit --body R --pattern P --plaid 0 --out @/f | length above zero"
            })
    void aChoiceThatThereIsNotIsRefusedWithTheOnesThereAre(String line, String said) {
        Ran ran = run(line);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(said);
    }

    @Test
    void aDraftInInchesHasFiveEighthsOfAllowanceAndAMetricOneFifteenMillimetres() throws IOException {
        // Section 8 of the trade facts: 5/8 in (15.875 mm) in US patterns, 1.5 cm in metric houses.
        run("draft skirt --table misses --size 14 --out @/in.svg --units in");
        run("draft skirt --table misses --size 14 --out @/cm.svg --units cm");
        assertThat(Files.readString(folder.resolve("in.svg"))).contains("data-allowance=\"15.875\"");
        assertThat(Files.readString(folder.resolve("cm.svg")))
                .contains("data-allowance=\"15\"")
                .doesNotContain("15.875");
    }

    @ParameterizedTest
    @CsvSource({"in, 612", "cm, 595.28", "mm, 595.28"})
    void aPrintInInchesIsOnLetterAndAMetricOneOnA4(String units, double widthPoints) throws IOException {
        assertThat(run("print --pattern P --out @/p.pdf --units " + units).code())
                .isZero();
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(folder.resolve("p.pdf")))) {
            assertThat((double) pdf.getPage(0).getMediaBox().getWidth())
                    .isBetween(widthPoints - 0.1, widthPoints + 0.1);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "size --body R | No size table was named",
                "size --body R --table nope | There is no size table",
                "size --body R --table misses --for hat | hat",
                "size --body R --table misses --row 3 | is not a survey",
                "draft bodice --table misses --size 14 | --out",
                "draft bodice --size 14 --out @/x.svg | No size table was named",
                "draft bodice --table misses --out @/x.svg | Say what to draft from",
                "draft bodice --table misses --size 14 --body R --out @/x.svg | not both",
                "draft bodice --table misses --size 14 --out @ | is a folder",
                "measure | No pattern was named",
                "measure --pattern R | not well-formed XML",
                "walk --pattern @/none.svg | There is no file",
                "walk --pattern @ | is a folder",
                "compare --body R | No pattern was named",
                "compare --body P --pattern P | no column \"measure\"",
                "compare --body R --pattern P --decide waste=1 | is not a measure",
                "compare --body R --pattern P --flat bust_girth=39 | goes with --paper-only",
                "fit --body R --pattern P | --out",
                "fit --body R --pattern P --decide waist_girth=400_in --out @/o | reachable from",
                "fit --body R --pattern P --ease waist_girth=x --out @/o | is not a length",
                "fit --body R --pattern P --size 15 --out @/o | has no size 15",
                "fit --body R --pattern P --paper a9 --out @/o | There is no paper",
                "fit --body R --pattern P --paper roll:1in --out @/o | a roll is",
                "fit --body R --paper-only skirt --out @/o | On paper only",
                "fit --body R --paper-only skirt --size 14 --out @/o | of which table",
                "fit --body R --paper-only skirt --flat hip_girth=0 --out @/o | above zero",
                "fit --body R --paper-only skirt --pattern P --out @/o | not both",
                "fit --body R --pattern P --out @/skirt.svg | is a file",
                "print --pattern P --paper roll:-3 --out @/p.pdf | a roll is",
                "print --pattern P --out @ | is a folder",
                "print --pattern P | --out",
                "alter --pattern P | alter"
            })
    void badInputIsOneSentenceExitCodeTwoAndNothingWritten(String line, String said) throws IOException {
        Path skirt = shell("skirt", "14");
        String before = Files.readString(skirt);
        Ran bad = run(line);
        assertThat(bad.code()).as(bad.err()).isEqualTo(2);
        assertThat(bad.err()).contains(said);
        assertThat(bad.err().strip().lines().count()).isEqualTo(1);
        assertThat(bad.err().strip()).endsWith(".");
        assertThat(bad.err()).doesNotContain("Exception").doesNotContain("fault of the program");
        assertThat(bad.out()).isEmpty();
        assertThat(files()).containsExactly("skirt.svg");
        assertThat(Files.readString(skirt)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"size", "draft", "measure", "walk", "compare", "fit", "print"})
    void unknownUnitsAreNamedWithTheUnitsThereAre(String command) {
        Ran bad = run(command + " --units furlong");
        assertThat(bad.code()).isEqualTo(2);
        assertThat(bad.err()).contains("furlong").contains("in, cm, mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"compare --body R --pattern B", "fit --body R --pattern B --out @/fitted"})
    void aPatternInAnotherSizeThanWouldBeChosenIsSaidInOneSentence(String line) {
        // Rosalind's full bust is 2 1/2 in larger than her upper chest of 35 1/2: size 14 (E-372); the bodice is a 16.
        String said = "The pattern was taken in size 16, and for this body size 14 would be chosen";
        assertThat(run(line).out()).containsOnlyOnce(said);
        assertThat(run(line.replace("--pattern B", "--pattern P")).out())
                .as("the skirt: by the hip of 41 the nearest are 16 and 18, the smaller is taken")
                .contains("The pattern was taken in size 14, and for this body size 16 would be chosen");
    }

    @Test
    void theReportShowsWhatEitherChoiceOfTheCapCosts() throws IOException {
        Ran fit = run("fit --body R --pattern B --out @/fitted --json");
        JsonNode sleeve = new ObjectMapper().readTree(fit.out()).get("sleeve");
        assertThat(sleeve).hasSize(2);
        assertThat(sleeve.get(0).get("taken").asBoolean()).isTrue();
        assertThat(sleeve.get(0).get("cap").asText()).isEqualTo("keep cap seam");
        assertThat(sleeve.get(1).get("taken").asBoolean()).isFalse();
        JsonNode seamKept = sleeve.get(0).get("after");
        JsonNode heightKept = sleeve.get(1).get("after");
        assertThat(heightKept.get("capHeightMm").asDouble())
                .isGreaterThan(seamKept.get("capHeightMm").asDouble());
        assertThat(heightKept.get("capEaseMm").asDouble())
                .isGreaterThan(seamKept.get("capEaseMm").asDouble());
    }
}
