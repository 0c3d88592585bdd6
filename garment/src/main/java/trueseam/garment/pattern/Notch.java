package trueseam.garment.pattern;

/**
 * A mark at an edge that meets a mark of another edge when sewn. It rides on the edge.
 *
 * @param edge the edge it is on
 * @param atMm its place along the edge, mm
 * @param kind how many cuts it has
 */
public record Notch(String edge, double atMm, Kind kind) {

    /** How many cuts a notch has. Common practice: one in front, two at the back, three at a centre. */
    public enum Kind {
        /** Front. */
        SINGLE,
        /** Back. */
        DOUBLE,
        /** Centre of a joined piece. */
        TRIPLE
    }

    // A notch before the start of its edge is on no edge.
    public Notch {
        if (!(atMm >= 0)) {
            throw new IllegalArgumentException("Notch on \"" + edge + "\": a place at " + atMm + " mm is not on it.");
        }
    }
}
