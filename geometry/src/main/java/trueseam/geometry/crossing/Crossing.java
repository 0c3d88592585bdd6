package trueseam.geometry.crossing;

import trueseam.geometry.PathPlace;

/**
 * A place that two paths share.
 *
 * @param kind a single point, or an end of a shared stretch
 * @param onFirst the place on the first path
 * @param onSecond the same place on the second path, within 1e-9 mm of the other; 1e-6 mm where the two touch without
 *     crossing
 */
public record Crossing(Kind kind, PathPlace onFirst, PathPlace onSecond) {

    /** What a shared place is. */
    public enum Kind {
        /** The paths cross or touch here and part again. */
        POINT,
        /** Walking the first path, a stretch shared with the second begins here. */
        SHARED_FROM,
        /** The shared stretch that was begun ends here. */
        SHARED_TO
    }
}
