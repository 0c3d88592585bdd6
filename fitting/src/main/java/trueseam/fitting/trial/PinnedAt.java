package trueseam.fitting.trial;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.body.Side;

/** Where the pins are. */
public enum PinnedAt {
    /** On one side or on both; left and right shall get the same. */
    BOTH("both", "left and right alike"),
    /** On the wearer's left, and only the left shall change. */
    LEFT("left", "the wearer's left alone changes"),
    /** On the wearer's right, and only the right shall change. */
    RIGHT("right", "the wearer's right alone changes"),
    /** Across the centre front or the centre back: left and right share it. */
    CENTRE("centre", "across centre front or back");

    private final String word;
    private final String words;

    PinnedAt(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /**
     * What it says.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }

    /**
     * What a file calls it.
     *
     * @return for example {@code left}
     */
    public String word() {
        return word;
    }

    /**
     * The side that alone changes.
     *
     * @return left, right, or nothing where both change
     */
    public Optional<Side> side() {
        return switch (this) {
            case LEFT -> Optional.of(Side.LEFT);
            case RIGHT -> Optional.of(Side.RIGHT);
            case BOTH, CENTRE -> Optional.empty();
        };
    }

    /**
     * Reads the word back.
     *
     * @param text as a user writes it; empty for both
     * @return where, or nothing
     */
    public static Optional<PinnedAt> ofWord(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        return wanted.isEmpty()
                ? Optional.of(BOTH)
                : List.of(values()).stream()
                        .filter(one -> one.word.equals(wanted))
                        .findFirst();
    }
}
