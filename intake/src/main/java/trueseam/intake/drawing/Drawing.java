package trueseam.intake.drawing;

import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.intake.apparel.ApparelPieces;

/**
 * Lines and words at true scale.
 *
 * @param file what the file is called, for messages
 * @param strokes the lines, in the order of the file
 * @param captions what is written
 * @param findings what was doubtful or left out, with its place in the file
 * @param apparel the pieces that the file itself names, if it keeps to the apparel convention
 */
public record Drawing(
        String file, List<Stroke> strokes, List<Caption> captions, List<Finding> findings, ApparelPieces apparel) {

    /** Does not change. */
    public Drawing {
        strokes = List.copyOf(strokes);
        captions = List.copyOf(captions);
        findings = List.copyOf(findings);
    }

    /**
     * A drawing whose file names no pieces.
     *
     * @param file what the file is called, for messages
     * @param strokes the lines, in the order of the file
     * @param captions what is written
     * @param findings what was doubtful or left out, with its place in the file
     */
    public Drawing(String file, List<Stroke> strokes, List<Caption> captions, List<Finding> findings) {
        this(file, strokes, captions, findings, ApparelPieces.NONE);
    }
}
