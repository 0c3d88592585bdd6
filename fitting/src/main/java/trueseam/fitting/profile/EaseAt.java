package trueseam.fitting.profile;

import java.util.OptionalDouble;

/**
 * Body and garment at one measured height.
 *
 * @param body the body there
 * @param beforeMm how far round the garment is there before the alterations, mm, where it reaches there; see {@link #heightBeforeMm}
 * @param afterMm the same after them
 * @param levelBeforeMm where the unaltered pattern marks this level, mm above the zero of the part, if it does
 * @param levelAfterMm where the altered one marks it
 */
public record EaseAt(
        BodyGirth body,
        OptionalDouble beforeMm,
        OptionalDouble afterMm,
        OptionalDouble levelBeforeMm,
        OptionalDouble levelAfterMm) {

    /** Tighter by less than this is the pencil line: the fitting chart forgives as much. */
    private static final double PENCIL_MM = 0.5;

    /**
     * Where the unaltered pattern was compared: where its height is known of the body only by the pattern, at the pattern's own mark.
     *
     * @return mm above the zero of the part
     */
    public double heightBeforeMm() {
        return body.from().isOfPattern() ? levelBeforeMm.orElse(body.heightMm()) : body.heightMm();
    }

    /**
     * Ease before the alterations.
     *
     * @return garment less body, mm, where the garment reaches there
     */
    public OptionalDouble easeBeforeMm() {
        return ease(beforeMm);
    }

    /**
     * Ease after the alterations.
     *
     * @return garment less body, mm, where the garment reaches there
     */
    public OptionalDouble easeAfterMm() {
        return ease(afterMm);
    }

    /**
     * How much tighter than the least ease it was.
     *
     * @return mm above zero, or nothing where it was not
     */
    public OptionalDouble shortBeforeMm() {
        return shortBy(easeBeforeMm());
    }

    /**
     * How much tighter than the least ease it still is.
     *
     * @return mm above zero, or nothing where it is not
     */
    public OptionalDouble shortAfterMm() {
        return shortBy(easeAfterMm());
    }

    private OptionalDouble ease(OptionalDouble garmentMm) {
        return garmentMm.isPresent() ? OptionalDouble.of(garmentMm.getAsDouble() - body.mm()) : garmentMm;
    }

    private OptionalDouble shortBy(OptionalDouble easeMm) {
        if (easeMm.isEmpty() || body.leastEaseMm().isEmpty()) {
            return OptionalDouble.empty();
        }
        double lacking = body.leastEaseMm().getAsDouble() - easeMm.getAsDouble();
        return lacking > PENCIL_MM ? OptionalDouble.of(lacking) : OptionalDouble.empty();
    }
}
