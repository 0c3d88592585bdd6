package trueseam.fitting.trial;

import java.util.Locale;

/** What the cloth does where the folds are. */
public enum Tension {
    /** There is cloth to spare. */
    SLACK("slack: there is cloth to spare, and it can be pinched"),
    /** There is too little cloth. */
    STRAIN("strain: the cloth is taut, and there is too little of it");

    private final String words;

    Tension(String words) {
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
     * @return for example {@code slack}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
