package trueseam.fitting.tissue;

import java.util.Optional;
import trueseam.geometry.Motion;

/**
 * A part of an altered edge, and where it comes from.
 *
 * @param edge the edge of the altered piece
 * @param fromMm where it begins on that edge, mm
 * @param toMm where it ends on that edge, mm
 * @param origin the original line that was traced, or nothing where the line is drawn new
 */
public record Run(String edge, double fromMm, double toMm, Optional<Origin> origin) {

    /**
     * The original that was traced.
     *
     * @param stretch the part of the original edge
     * @param motion where the pattern lay when it was traced
     */
    public record Origin(Stretch stretch, Motion motion) {}

    /**
     * Its length.
     *
     * @return mm
     */
    public double lengthMm() {
        return toMm - fromMm;
    }

    /**
     * Whether it lies where the original lay.
     *
     * @return true if traced without moving the pattern
     */
    public boolean isKept() {
        return origin.isPresent() && origin.get().motion().isNone(1e-9);
    }

    /**
     * Whether it is drawn new.
     *
     * @return true if joined
     */
    public boolean isDrawn() {
        return origin.isEmpty();
    }
}
