package trueseam.intake.bring;

import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;

/**
 * What came of a drawing.
 *
 * @param pattern the pattern
 * @param findings what was guessed, left out or doubtful, each with its piece
 */
public record Brought(Pattern pattern, List<Finding> findings) {

    /** Does not change. */
    public Brought {
        findings = List.copyOf(findings);
    }
}
