package trueseam.fitting.trial;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.body.Side;

/** Where the pins are. */
public enum PinnedAt {
    /** On one side or on both; left and right shall get the same. */
    BOTH("both"),
    /** On the wearer's left, and only the left shall change. */
    LEFT("left"),
    /** On the wearer's right, and only the right shall change. */
    RIGHT("right"),
    /** Across the centre front or the centre back: left and right share it. */
    CENTRE("centre");

    private final String word;

    PinnedAt(String word) {
        this.word = word;
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
