package trueseam.geometry.join;

import java.util.Locale;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Point;

/** A smooth line was asked to be shorter or longer than its ends and end directions allow. Nothing is clamped. */
public class LengthOutOfReachException extends GeometryException {

    private static final long serialVersionUID = 1L;

    private final double wantedMm;
    private final double shortestMm;
    private final double longestMm;

    /**
     * Holds the whole case.
     *
     * @param from where the line begins
     * @param to where it ends
     * @param wantedMm the length asked for, mm
     * @param shortestMm the shortest length of a smooth line between these ends, mm
     * @param longestMm the longest before it would cross itself or come to a point, mm
     */
    public LengthOutOfReachException(Point from, Point to, double wantedMm, double shortestMm, double longestMm) {
        super(String.format(
                Locale.ROOT,
                "A smooth line from (%.1f, %.1f) to (%.1f, %.1f) cannot be %.3f mm long: %.3f to %.3f mm can be reached;"
                        + " move an end or turn its direction.",
                from.x(),
                from.y(),
                to.x(),
                to.y(),
                wantedMm,
                shortestMm,
                longestMm));
        this.wantedMm = wantedMm;
        this.shortestMm = shortestMm;
        this.longestMm = longestMm;
    }

    /**
     * What was asked.
     *
     * @return length, mm
     */
    public double wantedMm() {
        return wantedMm;
    }

    /**
     * The shortest that can be had.
     *
     * @return length, mm
     */
    public double shortestMm() {
        return shortestMm;
    }

    /**
     * The longest that can be had.
     *
     * @return length, mm
     */
    public double longestMm() {
        return longestMm;
    }
}
