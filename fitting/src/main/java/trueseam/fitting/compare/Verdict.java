package trueseam.fitting.compare;

/** What is done about a difference. */
public enum Verdict {
    /** Nothing: it does not matter. */
    LEAVE("leave"),
    /** The pattern is altered. */
    ALTER("alter"),
    /** It matters, and no alteration for it is in the catalogue: it is settled on the trial garment. */
    TRY_ON("see trial garment");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /**
     * What a chart says.
     *
     * @return one to three words
     */
    public String word() {
        return word;
    }
}
