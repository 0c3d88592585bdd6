package trueseam.garment.pattern;

import java.util.Locale;
import java.util.Optional;

/** The lines across the grain at which a piece is measured or altered. */
public enum LevelName {
    /** Across the chest or the back, about half way down the armhole. */
    ACROSS,
    /** Through the bust point in front; the same distance down the side seam at the back. */
    BUST,
    /** Where a bodice or dress is lengthened or shortened below the bust. */
    BODICE_LENGTH,
    /** The waist. */
    WAIST,
    /** The fullest hip. */
    HIP,
    /** Where a skirt or dress is lengthened or shortened. */
    SKIRT_LENGTH,
    /** Where trousers are made deeper or shallower, across the hip above the crotch. */
    CROTCH_DEPTH,
    /** Through the crotch point. */
    CROTCH,
    /** Where a leg is lengthened or shortened above the knee. */
    ABOVE_KNEE,
    /** The knee. */
    KNEE,
    /** Where a leg is lengthened or shortened below the knee. */
    BELOW_KNEE,
    /** The fullest upper arm, from underarm to underarm of a sleeve. */
    BICEP,
    /** Where a sleeve is lengthened or shortened above the elbow. */
    ABOVE_ELBOW,
    /** The elbow. */
    ELBOW,
    /** Where a sleeve is lengthened or shortened below the elbow. */
    BELOW_ELBOW;

    /**
     * The word shown and written.
     *
     * @return for example {@code bodice length}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Reads the word back.
     *
     * @param word as given by {@link #word}
     * @return the name, or nothing if there is none of that word
     */
    public static Optional<LevelName> ofWord(String word) {
        for (LevelName name : values()) {
            if (name.word().equalsIgnoreCase(word.strip())) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether the line is one at which tissue is cut or folded for length, and not one of measuring.
     *
     * @return true for the lengthening lines
     */
    public boolean isLengthLine() {
        return switch (this) {
            case BODICE_LENGTH, SKIRT_LENGTH, CROTCH_DEPTH, ABOVE_KNEE, BELOW_KNEE, ABOVE_ELBOW, BELOW_ELBOW -> true;
            case ACROSS, BUST, WAIST, HIP, CROTCH, KNEE, BICEP, ELBOW -> false;
        };
    }
}
