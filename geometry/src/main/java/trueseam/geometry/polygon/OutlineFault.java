package trueseam.geometry.polygon;

import trueseam.geometry.Point;

/**
 * What keeps a path from being the outline of a piece.
 *
 * @param kind what is wrong
 * @param place where
 */
public record OutlineFault(Kind kind, Point place) {

    /** What can be wrong with an outline. */
    public enum Kind {
        /** Its end does not meet its start. */
        OPEN,
        /** It encloses nothing. */
        NO_AREA,
        /** It crosses or touches itself. */
        CROSSES_ITSELF
    }

    /**
     * The fault in a sentence.
     *
     * @return what and where
     */
    public String sentence() {
        String what =
                switch (kind) {
                    case OPEN -> "The outline is open: its end does not meet its start";
                    case NO_AREA -> "The outline encloses no area";
                    case CROSSES_ITSELF -> "The outline crosses or touches itself";
                };
        return String.format(java.util.Locale.ROOT, "%s at (%.1f, %.1f) mm.", what, place.x(), place.y());
    }
}
