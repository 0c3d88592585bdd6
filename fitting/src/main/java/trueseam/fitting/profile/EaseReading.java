package trueseam.fitting.profile;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Everything that is known at one height.
 *
 * @param heightMm mm above the zero of the part of the body
 * @param beforeMm garment before the alterations, mm round, where it reaches there
 * @param afterMm garment after them
 * @param bodyMm body, mm round, where it is known or lies between known girths
 * @param leastMm body with the least ease, mm round, likewise
 * @param measured what was measured at this height; empty where the body is drawn in between
 */
public record EaseReading(
        double heightMm,
        OptionalDouble beforeMm,
        OptionalDouble afterMm,
        OptionalDouble bodyMm,
        OptionalDouble leastMm,
        Optional<EaseAt> measured) {

    /**
     * Ease after the alterations.
     *
     * @return garment less body, mm, where both are known
     */
    public OptionalDouble easeAfterMm() {
        return less(afterMm, bodyMm);
    }

    /**
     * Ease before the alterations.
     *
     * @return garment less body, mm, where both are known
     */
    public OptionalDouble easeBeforeMm() {
        return less(beforeMm, bodyMm);
    }

    /**
     * The least ease there.
     *
     * @return mm, where it is known or lies between known ones
     */
    public OptionalDouble leastEaseMm() {
        return less(leastMm, bodyMm);
    }

    private static OptionalDouble less(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
                : OptionalDouble.empty();
    }
}
