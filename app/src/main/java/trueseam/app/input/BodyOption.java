package trueseam.app.input;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.body.BodyFile;
import trueseam.intake.body.EntryRules;
import trueseam.intake.survey.BroughtBody;

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
        BodyFile body = BroughtBody.read(
                        name, text, row == null ? "" : row, EntryRules.usual().withBareUnit(bareUnit))
                .file();
        refuseFailures(body);
        return body;
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
