package trueseam.cloth.goods;

/** How the cloth lies when it is cut. */
public enum Layers {
    /** Open: every piece is cut by itself, one of a pair on its face. */
    SINGLE("single layer"),
    /** Folded lengthwise, selvage on selvage: pairs are cut at once, pieces on a fold lie at the fold. */
    LENGTHWISE("folded lengthwise"),
    /** Folded crosswise, end on end: pairs are cut at once over the whole width; the upper layer's pile runs the other way. */
    CROSSWISE("folded crosswise");

    private final String words;

    Layers(String words) {
        this.words = words;
    }

    /**
     * In words.
     *
     * @return for example {@code folded lengthwise}
     */
    public String words() {
        return words;
    }

    /**
     * How many pieces one cut gives.
     *
     * @return 1 or 2
     */
    public int deep() {
        return this == SINGLE ? 1 : 2;
    }
}
