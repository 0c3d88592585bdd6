package trueseam.fitting.tissue;

/**
 * A part of an edge, in the direction of the outline.
 *
 * @param edge the edge
 * @param fromMm where it begins, mm along the edge
 * @param toMm where it ends, mm along the edge
 */
public record Stretch(String edge, double fromMm, double toMm) {

    // A stretch runs with the outline; the same place twice is the gap of a cut.
    public Stretch {
        if (!(0 <= fromMm && fromMm <= toMm)) {
            throw new IllegalArgumentException("A stretch of \"" + edge + "\" from " + fromMm + " to " + toMm
                    + " mm does not run in the direction of the outline.");
        }
    }

    /**
     * Its length.
     *
     * @return mm
     */
    public double lengthMm() {
        return toMm - fromMm;
    }
}
