package trueseam.fitting.standing;

/** What the evidence is worth. */
public enum Weight {
    /** Two or more earlier patterns agree within the measuring error, and more agree than say otherwise. */
    AGREED,
    /** One earlier pattern alone: told, not taken. */
    ONE_PATTERN,
    /** The earlier patterns contradict each other. */
    CONTRADICTED,
    /** It was left alone every time. */
    LEFT_ALONE,
    /** A finished length is chosen for each garment anew. */
    CHOSEN_LENGTH,
    /** Nothing that was written down can be counted. */
    UNCOUNTED;

    /**
     * Whether an amount is proposed.
     *
     * @return true for agreement, and, weaker, for one pattern
     */
    public boolean isProposed() {
        return this == AGREED || this == ONE_PATTERN;
    }
}
