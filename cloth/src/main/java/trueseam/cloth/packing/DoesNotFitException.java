package trueseam.cloth.packing;

/** A part is wider than the strip in every way in which it may lie, or may lie nowhere because of a repeat. */
public final class DoesNotFitException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String part;

    /**
     * Which part does not fit.
     *
     * @param part its name
     */
    public DoesNotFitException(String part) {
        super(part + " does not fit across the strip in any way in which it may lie");
        this.part = part;
    }

    /**
     * Which part.
     *
     * @return its name
     */
    public String part() {
        return part;
    }
}
