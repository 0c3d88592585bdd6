package trueseam.garment.blend;

import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;

/**
 * A pattern drawn across the nest.
 *
 * @param pattern the pattern
 * @param findings what could not be blended, and what does not walk as it did
 */
public record Blended(Pattern pattern, List<Finding> findings) {

    /** Does not change. */
    public Blended {
        findings = List.copyOf(findings);
    }
}
