package trueseam.intake.bring;

import java.util.List;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.said.Corrections;

/**
 * What came of a drawing.
 *
 * @param pattern the pattern
 * @param pieces its pieces by their place in the drawing, those left out among them, with how sure everything is
 * @param seams its seams, with how sure they are
 * @param corrections what was said and is not as proposed anyway
 * @param findings what was guessed, left out or doubtful, each with its piece
 */
public record Brought(
        Pattern pattern,
        List<BroughtPiece> pieces,
        List<BroughtSeam> seams,
        Corrections corrections,
        List<Finding> findings) {

    /** Does not change. */
    public Brought {
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        findings = List.copyOf(findings);
    }
}
