package trueseam.fitting.trial;

import java.util.Locale;

/**
 * Which way folds lie. In general, folds that lie across say too long or too tight across; up and down, too wide, or too short under
 * tension; slanting ones point at the place that is too small, or to what stands out [web:wrinkle].
 */
public enum FoldDirection {
    /** From side to side. */
    ACROSS("straight across, from side to side"),
    /** Up and down. */
    UP_AND_DOWN("up and down"),
    /** Slanting; they point somewhere. */
    SLANTING("slanting: they point somewhere"),
    /** No folds. */
    NONE("there are no folds: it gapes, binds, stands off, swings, or ends at the wrong place");

    private final String words;

    FoldDirection(String words) {
        this.words = words;
    }

    /**
     * What it is called.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }

    /**
     * What an answer calls it.
     *
     * @return for example {@code up-and-down}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
