package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trueseam.fitting.trial.Symptom;
import trueseam.fitting.trial.TellingQuestion;
import trueseam.fitting.trial.TrialFolds;
import trueseam.output.trial.TrialDocument;

/** The document about the trial garment says what the tables say. */
class TrialDocumentTest {

    private static final Path DOCS = Path.of("..", "docs");

    @Test
    void catalogueInTheDocumentIsTheOneThatTheTablesWrite() throws IOException {
        String document = Files.readString(DOCS.resolve("trial-garment.md"));

        assertThat(document.substring(document.indexOf(TrialDocument.HEADING)))
                .as("write it anew: ./trueseam trial --markdown, in place of what begins with its heading")
                .isEqualTo(TrialDocument.markdown());
    }

    @Test
    void everySourceMarkIsInTheListOfSources() throws IOException {
        String sources = Files.readString(DOCS.resolve("sources.md"));
        Stream<String> marks = Stream.concat(
                        TrialFolds.symptoms().stream().map(Symptom::source),
                        TrialFolds.questions().stream().map(TellingQuestion::source))
                .flatMap(source -> Stream.of(source.split(" ")))
                .filter(mark -> !mark.equals("CP"))
                .distinct();

        assertThat(marks).isNotEmpty().allSatisfy(mark -> assertThat(sources).contains(mark));
    }
}
