package trueseam.fitting.plan;

/** A pattern has no piece that the catalogue knows how to alter. */
public class UnknownGarmentException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String pattern;

    /**
     * Says which pattern.
     *
     * @param pattern its name
     */
    public UnknownGarmentException(String pattern) {
        super("Pattern \"" + pattern + "\" has no piece that is known as part of a bodice, dress, skirt or trousers;"
                + " give its pieces their kinds.");
        this.pattern = pattern;
    }

    /**
     * The pattern.
     *
     * @return its name
     */
    public String pattern() {
        return pattern;
    }
}
