package trueseam.fitting.trial;

/** A finding of a sitting cannot be taken as it was written; the sentence says what to write instead. */
public final class PinnedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** The field that has to be mended; also the column of a file. */
    public enum Field {
        /** What was seen. */
        SEEN,
        /** The cause. */
        CAUSE,
        /** The alteration. */
        ALTERATION,
        /** The amount. */
        PINNED,
        /** What the amount measures. */
        AS,
        /** The side. */
        SIDE
    }

    private final Field field;

    /**
     * Says why.
     *
     * @param field what has to be mended
     * @param sentence what is wrong and what to do
     */
    public PinnedException(Field field, String sentence) {
        super(sentence);
        this.field = field;
    }

    /**
     * What has to be mended.
     *
     * @return the field
     */
    public Field field() {
        return field;
    }
}
