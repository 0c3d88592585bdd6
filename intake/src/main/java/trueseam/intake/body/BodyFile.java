package trueseam.intake.body;

import java.util.List;
import java.util.stream.Collectors;
import trueseam.garment.body.Body;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;

/**
 * A body as read from a file. What the readings say among themselves, such as two too far apart, is {@link Body#findings}.
 *
 * @param body the readings that could be read
 * @param findings what could not, or is doubtful, each with its line
 */
public record BodyFile(Body body, List<Finding> findings) {

    /**
     * Keeps a copy of the findings.
     *
     * @param body as of the record
     * @param findings as of the record
     */
    public BodyFile {
        findings = List.copyOf(findings);
    }

    /** The label written in the file as one line; the file's own name when none is written. */
    static String label(String written, String file) {
        String line = written.lines().collect(Collectors.joining(" ")).strip();
        return line.isEmpty() ? file : line;
    }

    /**
     * Whether something in the file could not be used.
     *
     * @return true when a finding is a failure
     */
    public boolean hasFailures() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.FAILURE);
    }
}
