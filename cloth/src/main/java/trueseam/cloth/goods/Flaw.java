package trueseam.cloth.goods;

/**
 * A place of the cloth that no piece may cover: a hole, a stain, a corner that is missing.
 *
 * @param fromMm where it begins along the cloth, mm from the end that is laid first
 * @param toMm where it ends
 * @param lowMm where it begins across the cloth, mm from the lower selvage of the open cloth
 * @param highMm where it ends across
 */
public record Flaw(double fromMm, double toMm, double lowMm, double highMm) {

    /** A flaw has an extent. */
    public Flaw {
        if (!(fromMm >= 0 && toMm > fromMm && lowMm >= 0 && highMm > lowMm)) {
            throw new IllegalArgumentException("A flaw from " + fromMm + " to " + toMm + " mm along and " + lowMm
                    + " to " + highMm + " mm across the cloth has no extent; give the smaller number first.");
        }
    }
}
