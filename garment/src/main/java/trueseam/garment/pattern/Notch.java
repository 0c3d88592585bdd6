package trueseam.garment.pattern;

import java.util.Locale;
import java.util.Optional;

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
        TRIPLE;

        /**
         * How many cuts.
         *
         * @return 1 to 3
         */
        public int cuts() {
            return switch (this) {
                case SINGLE -> 1;
                case DOUBLE -> 2;
                case TRIPLE -> 3;
            };
        }

        /**
         * The word shown and written.
         *
         * @return for example {@code double}
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Reads the word back.
         *
         * @param word as given by {@link #word}
         * @return the kind, or nothing if there is none of that word
         */
        public static Optional<Kind> ofWord(String word) {
            for (Kind kind : values()) {
                if (kind.word().equalsIgnoreCase(word.strip())) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }
    }

    // A notch before the start of its edge is on no edge.
    public Notch {
        if (!(atMm >= 0)) {
            throw new IllegalArgumentException("Notch on \"" + edge + "\": a place at " + atMm + " mm is not on it.");
        }
        atMm = atMm + 0.0; // -0.0 and 0.0 are one place
    }
}
