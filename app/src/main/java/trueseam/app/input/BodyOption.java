package trueseam.app.input;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.body.BodyCsv;
import trueseam.intake.body.BodyFile;
import trueseam.intake.body.BodyJson;
import trueseam.intake.body.EntryRules;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/** {@code --body} and {@code --row}: whose measures. */
public final class BodyOption {

    @Option(
            names = "--body",
            paramLabel = "FILE",
            description = "The body: a CSV file (header measure,value), a JSON file, or a survey CSV with --row.")
    private Path file;

    @Option(names = "--row", paramLabel = "ID", description = "The person of a survey CSV, by its SubjectId.")
    private String row;

    /** For the command line. */
    public BodyOption() {}

    /**
     * Whether a body was named.
     *
     * @return true if it was
     */
    public boolean isGiven() {
        return file != null;
    }

    /**
     * Reads the body.
     *
     * @param bareUnit the unit of numbers without one
     * @return the body and what was noticed on the way
     * @throws InputException if no body was named, or an entry of it is not usable
     */
    public BodyFile read(LengthUnit bareUnit) {
        if (file == null) {
            throw new InputException("No body was named; give --body FILE.");
        }
        String text = Texts.read(file);
        String name = file.getFileName().toString();
        if (isSurvey(text)) {
            return new BodyFile(surveyed(name, text).asBody(), List.of());
        }
        if (row != null) {
            throw new InputException(
                    name + " is not a survey (it has no SubjectId column), so --row cannot be used with it.");
        }
        EntryRules rules = EntryRules.usual().withBareUnit(bareUnit);
        BodyFile body = text.stripLeading().startsWith("{")
                ? BodyJson.read(name, text, rules)
                : BodyCsv.read(name, text, rules);
        refuseFailures(body);
        return body;
    }

    private static boolean isSurvey(String text) {
        int end = text.indexOf('\n');
        return (end < 0 ? text : text.substring(0, end)).contains("SubjectId");
    }

    private SurveyRow surveyed(String name, String text) {
        if (row == null) {
            throw new InputException(name + " is a survey of many people; choose one with --row ID.");
        }
        return Survey.read(name, text).row(row);
    }

    private static void refuseFailures(BodyFile body) {
        Optional<Finding> failure = body.findings().stream()
                .filter(f -> f.severity() == Severity.FAILURE)
                .findFirst();
        if (failure.isPresent()) {
            throw new InputException(
                    failure.get().place() + ": " + failure.get().sentence());
        }
    }
}
