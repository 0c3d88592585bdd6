package trueseam.fitting.truing;

import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Point;

/**
 * How far an alteration moved the two ends that meet at one end of a seam along the grain, front and back.
 *
 * @param seam the seam
 * @param end which end, for example {@code underarm}
 * @param first the edge of the first piece
 * @param firstMm how far its end went up, mm
 * @param second the edge of the second piece
 * @param secondMm how far its end went up, mm
 * @param ends the two corners
 */
public record LevelShift(
        String seam, String end, EdgeRef first, double firstMm, EdgeRef second, double secondMm, SeamEnds ends) {

    /**
     * How far apart the two ends are now that met before.
     *
     * @return first less second, mm
     */
    public double apartMm() {
        return firstMm - secondMm;
    }

    Point firstCorner(Pattern pattern) {
        return ends.firstCorner(pattern);
    }
}
