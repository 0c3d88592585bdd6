package trueseam.geometry;

/** Drawn geometry that cannot be: a point at infinity, an outline of nothing. The message is one sentence. */
public class GeometryException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Says what was wrong.
     *
     * @param sentence what, where, what was expected
     */
    public GeometryException(String sentence) {
        super(sentence);
    }
}
