package trueseam.intake.drawing;

import java.util.List;
import trueseam.garment.finding.Finding;

/**
 * Lines and words at true scale.
 *
 * @param file what the file is called, for messages
 * @param strokes the lines, in the order of the file
 * @param captions what is written
 * @param findings what was doubtful or left out, with its place in the file
 */
public record Drawing(String file, List<Stroke> strokes, List<Caption> captions, List<Finding> findings) {

    /** Does not change. */
    public Drawing {
        strokes = List.copyOf(strokes);
        captions = List.copyOf(captions);
        findings = List.copyOf(findings);
    }
}
