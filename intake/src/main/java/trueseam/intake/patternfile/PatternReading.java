package trueseam.intake.patternfile;

import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.Pattern;

/**
 * A pattern as read from its file.
 *
 * @param pattern what could be read
 * @param findings what was missing, changed by hand or could not be used, each with its line
 */
public record PatternReading(Pattern pattern, List<Finding> findings) {

    /**
     * Keeps a copy of the findings.
     *
     * @param pattern as of the record
     * @param findings as of the record
     */
    public PatternReading {
        findings = List.copyOf(findings);
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
