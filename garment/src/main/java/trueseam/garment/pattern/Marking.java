package trueseam.garment.pattern;

import trueseam.geometry.Path;

/**
 * A line drawn inside a piece that is neither edge, dart, level nor grain: a pocket place, a fold.
 *
 * @param name what it is
 * @param path where it is
 */
public record Marking(String name, Path path) {

    /** A buttonhole or the place of a button, on the line where two edges lap; several are numbered from the top. */
    public static final String BUTTONHOLE = "buttonhole";

    /** Where a pocket is set on, or the opening of a pocket. */
    public static final String POCKET = "pocket";

    /** The lower end of the opening in a seam, such as of a zip. */
    public static final String PLACKET = "placket end";

    /** Where a belt carrier is sewn to a band; several are numbered from the front. */
    public static final String CARRIER = "belt carrier";

    /**
     * Whether it is a mark of a kind.
     *
     * @param kind for example {@value #BUTTONHOLE}
     * @return true for {@code buttonhole} and {@code buttonhole 3}
     */
    public boolean is(String kind) {
        return name.equals(kind) || name.startsWith(kind + " ");
    }
}
