package trueseam.cloth.packing;

/**
 * Where a place of a piece may come to lie on cloth with a repeat.
 *
 * @param step the repeat, mm, above 0
 * @param phase one line of it, mm from the start of the cloth
 */
public record Rhythm(double step, double phase) {

    /** Checks. */
    public Rhythm {
        if (!(step > 0) || !Double.isFinite(phase)) {
            throw new IllegalArgumentException("a repeat must be longer than 0, and is " + step);
        }
    }
}
