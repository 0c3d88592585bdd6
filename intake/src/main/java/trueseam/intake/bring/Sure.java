package trueseam.intake.bring;

/**
 * Something proposed, or said.
 *
 * @param <T> what
 * @param value what it is
 * @param confidence from 0 to 1 that it is so
 * @param said whether somebody said so
 */
public record Sure<T>(T value, double confidence, boolean said) {

    /**
     * Proposed.
     *
     * @param <T> what
     * @param value what it is
     * @param confidence from 0 to 1 that it is so
     * @return the proposal
     */
    public static <T> Sure<T> proposed(T value, double confidence) {
        return new Sure<>(value, Math.max(0, Math.min(1, confidence)), false);
    }

    /**
     * Said.
     *
     * @param <T> what
     * @param value what it is
     * @return what was said
     */
    public static <T> Sure<T> said(T value) {
        return new Sure<>(value, 1, true);
    }

    /**
     * How sure it is.
     *
     * @return in words
     */
    public Sureness sureness() {
        return Sureness.of(confidence, said);
    }

    /**
     * How sure it is, with its number.
     *
     * @return such as {@code likely, 83 in 100}
     */
    public String words() {
        return Sureness.words(confidence, said);
    }
}
