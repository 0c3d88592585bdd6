package trueseam.app.input;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.patternfile.PatternReading;

/** {@code --pattern}: a pattern SVG. */
public final class PatternOption {

    @Option(
            names = "--pattern",
            paramLabel = "FILE",
            description = "The pattern: an SVG file as in docs/pattern-file.md, such as draft writes.")
    private Path file;

    /** For the command line. */
    public PatternOption() {}

    /**
     * Whether a pattern was named.
     *
     * @return true if it was
     */
    public boolean isGiven() {
        return file != null;
    }

    /**
     * Reads the pattern.
     *
     * @param err where notes and warnings about the file go
     * @return the pattern
     * @throws InputException if none was named or it is not whole
     */
    public Pattern read(PrintWriter err) {
        if (file == null) {
            throw new InputException("No pattern was named; give --pattern FILE.");
        }
        return read(file, err);
    }

    /**
     * Reads a pattern file.
     *
     * @param file the file
     * @param err where notes and warnings about the file go
     * @return the pattern
     * @throws InputException if it is not whole
     */
    public static Pattern read(Path file, PrintWriter err) {
        PatternReading reading = PatternFile.read(file.getFileName().toString(), Texts.read(file));
        for (Finding finding : reading.findings()) {
            if (finding.severity() == Severity.FAILURE) {
                throw new InputException(finding.place() + ": " + finding.sentence());
            }
            err.println(finding.place() + ": " + finding.sentence());
        }
        return reading.pattern();
    }
}
