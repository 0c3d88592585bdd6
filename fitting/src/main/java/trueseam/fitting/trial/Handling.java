package trueseam.fitting.trial;

/** What is done with the cloth of a trial garment. */
public enum Handling {
    /** A fold or a seam is taken in. */
    TAKE("taken in"),
    /** A seam is let out, or a slash opened and a strip pinned behind it. */
    GIVE("let out"),
    /** A line or a point gets a new mark. */
    MOVE("moved to a new mark");

    private final String words;

    Handling(String words) {
        this.words = words;
    }

    /**
     * What it is called.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }
}
