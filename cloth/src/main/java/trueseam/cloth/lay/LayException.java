package trueseam.cloth.lay;

/** The pieces cannot be laid on that cloth. */
public final class LayException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String place;
    private final boolean tooWide;

    /**
     * What cannot be.
     *
     * @param place the piece, or "cloth"
     * @param sentence what is wrong and what to do
     */
    public LayException(String place, String sentence) {
        this(place, sentence, false);
    }

    LayException(String place, String sentence, boolean tooWide) {
        super(sentence);
        this.place = place;
        this.tooWide = tooWide;
    }

    /**
     * Whether a piece is too wide for the cloth as it lies.
     *
     * @return true if a wider cloth, or one in a single layer, may do
     */
    public boolean tooWide() {
        return tooWide;
    }

    /**
     * Where.
     *
     * @return the piece, or "cloth"
     */
    public String place() {
        return place;
    }
}
