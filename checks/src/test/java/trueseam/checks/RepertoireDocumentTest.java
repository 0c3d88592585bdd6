package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.length.LengthFormat;
import trueseam.output.repertoire.RepertoireText;

/** The documents about the repertoire say what the code says. */
class RepertoireDocumentTest {

    private static final Path DOCS = Path.of("..", "docs");

    @Test
    void documentOfTheRepertoireIsTheOneThatTheEntriesWrite() throws IOException {
        String wanted = RepertoireText.markdown(Repertoire.all(), LengthFormat.inches(8));

        assertThat(Files.readString(DOCS.resolve("alterations.md")))
                .as("write it anew: ./trueseam alterations --markdown > docs/alterations.md")
                .isEqualTo(wanted);
    }

    @Test
    void everyAlterationThatTheIssueNamesIsThereAndIsToldInTheDocument() throws IOException {
        String document = Files.readString(DOCS.resolve("alterations.md"));

        // trade.md 4.3: the rows of the catalogue, by the words of a dressmaker.
        List<String> rows = Arrays.asList(
                "full bust",
                "bust point height",
                "bust point width",
                "across back",
                "back below armholes",
                "round back",
                "dowager's hump",
                "shoulder blades",
                "erect back",
                "sway-back",
                "shoulder width",
                "square shoulder",
                "sloping shoulder",
                "forward shoulder",
                "neck",
                "full neck",
                "full or hollow chest",
                "armhole height",
                "gaping neck",
                "gaping armhole",
                "length above the bust",
                "length below the bust",
                "front length",
                "dress length",
                "bust girth",
                "waist girth",
                "hip girth of a dress",
                "waist by darts",
                "large abdomen of a bodice",
                "upper arm girth",
                "whole sleeve girth",
                "elbow girth",
                "forearm girth",
                "elbow fullness",
                "wrist girth",
                "sleeve length above the elbow",
                "sleeve length below the elbow",
                "cap height",
                "cap ease",
                "cap turn",
                "collar outer edge",
                "collar neck edge",
                "skirt waist",
                "skirt hip",
                "skirt waist and hip",
                "hip curve",
                "one hip larger",
                "one hip higher",
                "full abdomen",
                "prominent hips",
                "large seat",
                "sway-back of a skirt",
                "hem sweep",
                "skirt length",
                "trouser waist",
                "trouser hip",
                "crotch depth",
                "front crotch length",
                "back crotch length",
                "trouser abdomen",
                "trouser seat",
                "sway-back with hip bone and abdomen",
                "trouser hip curve",
                "outer thigh",
                "inner thigh",
                "thigh",
                "knee",
                "calf",
                "trouser hem width",
                "instep",
                "plait for the abdomen",
                "knock knee",
                "bow leg",
                "leg length above the knee",
                "leg length below the knee",
                "one leg long");
        for (String row : rows) {
            Entry entry = Repertoire.named(row).orElseThrow(() -> new AssertionError("no alteration " + row));
            assertThat(document).contains("- **Moves:** " + entry.moves());
        }
    }

    @Test
    void whereSourcesDisagreeTheRepertoireTellsBothAndLetsHerChoose() throws IOException {
        String document = Files.readString(DOCS.resolve("alterations.md"));

        // trade.md 11, by its numbers; 1 and 2 (ease) are in the ease table, 3 in the choice of a size, 6 in the hem
        // allowances, 7 is
        // measured at the person's own hip.
        assertThat(document).contains("3/4 in [web:capnote]", "1 1/2 in [web:capdraft]"); // 4: cap ease
        assertThat(document).contains("divides by the seams [CWU17]"); // 5: by seams or by edges
        assertThat(document)
                .contains("stay when the skirt is pulled down", "[web:sway2]"); // 8: sway-back or tight seat
        assertThat(ways("across back")).contains("slash", "into the shoulder dart"); // 9: broad back, the shoulder
        assertThat(ways("square shoulder")).contains("neck end", "armhole end"); // 10
        assertThat(ways("upper arm girth")).contains("keep the cap seam", "keep the cap height"); // 11
    }

    private static List<String> ways(String name) {
        return Repertoire.named(name).orElseThrow().variants().stream()
                .map(way -> {
                    assertThat(way.reason()).as(way.name()).isNotBlank();
                    return way.name();
                })
                .toList();
    }

    @Test
    void everySourceCodeOfAnEntryIsInTheListOfSources() throws IOException {
        String sources = Files.readString(DOCS.resolve("sources.md"));
        Pattern code = Pattern.compile("\\b(?:web:\\w+|[A-Z]{2,6}\\d{2,4}|MULTI|HERTZ|ECOURSE|SLACK|SHOULDER)\\b");
        int cited = 0;
        for (Entry entry : Repertoire.all()) {
            Matcher matcher = code.matcher(entry.source());
            while (matcher.find()) {
                cited++;
                assertThat(sources).as(entry.name()).contains(matcher.group());
            }
        }
        assertThat(cited).isGreaterThan(20);
    }
}
