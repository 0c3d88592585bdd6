package trueseam.worktable.work;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * What came of working something out.
 *
 * @param <T> what was wanted
 * @param value the value, if it came out
 * @param sentence else why not, and what to do
 * @param missing whether it is only that something has not been given yet
 */
public record Outcome<T>(Optional<T> value, String sentence, boolean missing) {

    /**
     * It came out.
     *
     * @param <T> what was wanted
     * @param value the value
     * @return the outcome
     */
    public static <T> Outcome<T> of(T value) {
        return new Outcome<>(Optional.of(value), "", false);
    }

    /**
     * Something has not been given yet.
     *
     * @param <T> what was wanted
     * @param sentence what, and where to give it
     * @return the outcome
     */
    public static <T> Outcome<T> missing(String sentence) {
        return new Outcome<>(Optional.empty(), sentence, true);
    }

    /**
     * It cannot be done with what was given.
     *
     * @param <T> what was wanted
     * @param sentence why, and what to do
     * @return the outcome
     */
    public static <T> Outcome<T> refused(String sentence) {
        return new Outcome<>(Optional.empty(), sentence, false);
    }

    /**
     * What comes of some work, or the engine's sentence why it refuses: every exception type of our rooms carries a sentence for the
     * user; anything else is a fault and passes on.
     *
     * @param <T> what is wanted
     * @param work the work
     * @return its outcome
     */
    public static <T> Outcome<T> orSentence(Supplier<Outcome<T>> work) {
        try {
            return work.get();
        } catch (RuntimeException e) {
            if (e.getClass().getName().startsWith("trueseam.")) {
                return refused(e.getMessage());
            }
            throw e;
        }
    }

    /**
     * The same reason for something else.
     *
     * @param <S> what is wanted now
     * @return the outcome without a value
     */
    public <S> Outcome<S> reason() {
        return new Outcome<>(Optional.empty(), sentence, missing);
    }

    /**
     * Whether it came out.
     *
     * @return true if there is a value
     */
    public boolean isThere() {
        return value.isPresent();
    }

    /**
     * The value.
     *
     * @return the value
     * @throws IllegalStateException if there is none
     */
    public T get() {
        return value.orElseThrow(() -> new IllegalStateException(sentence));
    }
}
