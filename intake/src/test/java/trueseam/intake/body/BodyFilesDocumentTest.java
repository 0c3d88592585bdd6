package trueseam.intake.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTableCsv;
import trueseam.intake.size.SizeTables;

/** The examples of docs/body-files.md are read as they stand. */
class BodyFilesDocumentTest {

    private static String document() throws IOException {
        return Files.readString(Path.of("../docs/body-files.md"));
    }

    private static String example(String language) throws IOException {
        Matcher fence =
                Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL).matcher(document());
        assertThat(fence.find()).as(language).isTrue();
        return fence.group(1);
    }

    @Test
    void theBodiesAreRead() throws IOException {
        BodyFile csv = BodyCsv.read("doc.csv", example("csv"), EntryRules.usual());
        assertThat(csv.findings()).isEmpty();
        assertThat(csv.body().readings()).hasSize(5);
        assertThat(csv.body().mm(Measure.SHOULDER_LENGTH)).isEqualTo((127 + 123.825) / 2);
        BodyFile json = BodyJson.read("doc.json", example("json"), EntryRules.usual());
        assertThat(json.findings()).isEmpty();
        assertThat(json.body().readings()).hasSize(2);
    }

    @Test
    void theSizeTableIsRead() throws IOException {
        SizeTable table = SizeTableCsv.read("doc.csv", example("size-table"));
        assertThat(table.mm("A", Measure.BACK_WAIST_LENGTH)).isEqualTo(425);
        assertThat(table.notes()).containsKey(Measure.STATURE);
    }

    @Test
    void theCountsAndNamesAreRight() throws IOException {
        assertThat(document()).contains("one of the " + Measure.values().length + " measures");
        for (String name : new String[] {"misses", "women", "miss petite", "misses astm", "men (from survey)"}) {
            assertThat(document()).contains("`" + name + "`");
            assertThat(SizeTables.named(name)).isNotNull();
        }
    }
}
