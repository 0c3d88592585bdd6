package trueseam.intake.bring;

import java.util.OptionalDouble;
import trueseam.garment.pattern.Seam;
import trueseam.intake.said.SeamSaid;

/**
 * A seam, and how sure it is.
 *
 * @param seam the seam, with how sure that is
 * @param firstMm sewn length of its first side, mm
 * @param secondMm sewn length of its second side, mm
 * @param reason why it is proposed
 */
public record BroughtSeam(Sure<Seam> seam, double firstMm, double secondMm, String reason) {

    /**
     * The same in the words of a correction.
     *
     * @return what would have to be said for it
     */
    public SeamSaid asSaid() {
        Seam s = seam.value();
        return new SeamSaid(s.name(), s.first(), s.second(), OptionalDouble.of(s.easeMm()), true);
    }
}
