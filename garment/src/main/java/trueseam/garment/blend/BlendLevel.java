package trueseam.garment.blend;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The levels at which another size may be taken, from the top. */
public enum BlendLevel {
    /** Neck, shoulder and armhole: the frame of the body, measured across the upper chest. */
    FRAME("neck", "shoulder", "armhole", "upper chest", "chest"),
    /** The bust. */
    BUST(),
    /** The waist, with its darts. */
    WAIST(),
    /** The hip, and the crotch of trousers. */
    HIP("hips", "crotch"),
    /** The knee. */
    KNEE(),
    /** The lower edge. */
    HEM("length"),
    /** The width of a sleeve at the upper arm. */
    BICEP("upper arm", "biceps"),
    /** The lower edge of a sleeve. */
    WRIST();

    private final List<String> otherWords;

    BlendLevel(String... otherWords) {
        this.otherWords = List.of(otherWords);
    }

    /**
     * The word shown and written.
     *
     * @return for example {@code waist}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads a word.
     *
     * @param text the level's own word, or a usual one for the same place, such as {@code shoulder} for the frame
     * @return the level, or nothing if it is none
     */
    public static Optional<BlendLevel> ofWord(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        for (BlendLevel level : values()) {
            if (level.word().equals(word) || level.otherWords.contains(word)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    boolean isOfSleeve() {
        return this == BICEP || this == WRIST;
    }
}
