package trueseam.garment.pattern;

import trueseam.geometry.Path;

/**
 * One stitching edge of a piece, from corner to corner. Where a dart is sewn into the edge, the path crosses the dart's
 * mouth along its cap; the mouth is part of the outline and not of the sewn length.
 *
 * @param name unique in its piece, for example {@code side} or {@code cap front}
 * @param role what it is
 * @param path open path in the direction of the outline, anticlockwise
 * @param allowanceMm seam allowance outside the edge, mm; 0 at a fold
 */
public record Edge(String name, EdgeRole role, Path path, double allowanceMm) {

    /** The widest allowance that is taken for one: deep hems included. */
    public static final double WIDEST_ALLOWANCE_MM = 200;

    // An edge without a name cannot be told apart, and a negative allowance would cut into the stitching.
    public Edge {
        if (name.isBlank()) {
            throw new IllegalArgumentException("An edge needs a name.");
        }
        if (!(0 <= allowanceMm && allowanceMm <= WIDEST_ALLOWANCE_MM)) {
            throw new IllegalArgumentException("Edge \"" + name + "\": an allowance of " + allowanceMm
                    + " mm is not possible; give 0 to " + WIDEST_ALLOWANCE_MM + " mm.");
        }
        allowanceMm = allowanceMm + 0.0; // -0.0 and 0.0 are one allowance
    }

    /**
     * The same edge drawn anew.
     *
     * @param drawn its new path
     * @return the edge with that path
     */
    public Edge withPath(Path drawn) {
        return new Edge(name, role, drawn, allowanceMm);
    }

    /**
     * The length along the stitching line, dart mouths included.
     *
     * @return mm
     */
    public double length() {
        return path.length();
    }
}
