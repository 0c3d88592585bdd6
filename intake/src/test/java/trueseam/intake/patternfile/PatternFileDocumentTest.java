package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.PieceKind;

/** docs/pattern-file.md says what is so. */
class PatternFileDocumentTest {

    private static String document() throws IOException {
        return Files.readString(Path.of("../docs/pattern-file.md"));
    }

    @Test
    void theExampleIsReadWithoutFindings() throws IOException {
        Matcher fence = Pattern.compile("```svg\n(.*?)```", Pattern.DOTALL).matcher(document());
        assertThat(fence.find()).isTrue();
        PatternReading read = PatternFile.read("doc.svg", fence.group(1));
        assertThat(read.findings()).isEmpty();
        assertThat(read.pattern().name()).isEqualTo("doll's skirt");
        assertThat(read.pattern().easeMm()).containsEntry(Measure.HIP_GIRTH, 40.0);
        assertThat(read.pattern().mismatchMm(read.pattern().seams().get(0))).isZero();
        assertThat(read.pattern().piece("front").darts()).hasSize(1);
        assertThat(read.pattern().piece("front").notches().get(0).atMm()).isCloseTo(80, within(1.0));
    }

    @Test
    void everyAttributeAndWordIsDocumented() throws Exception {
        String document = document();
        for (Field field : Words.class.getDeclaredFields()) {
            String word = (String) field.get(null);
            assertThat(document).contains(word.length() == 1 ? "`" + word + "`" : word);
        }
        assertThat(Arrays.stream(EdgeRole.values()).map(EdgeRole::word))
                .allMatch(w -> document.contains("`" + w + "`"));
        assertThat(Arrays.stream(PieceKind.values()).map(PieceKind::word))
                .allMatch(w -> document.contains("`" + w + "`"));
        assertThat(Arrays.stream(LevelName.values()).map(LevelName::word))
                .allMatch(w -> document.contains("`" + w + "`"));
        assertThat(Arrays.stream(Notch.Kind.values()).map(Notch.Kind::word))
                .allMatch(w -> document.contains("`" + w + "`"));
    }
}
