package trueseam.garment.handbook;

/** A question was answered by a word that is none of its answers. */
public final class HandbookException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String question;
    private final String word;

    HandbookException(String question, String word, String sentence) {
        super(sentence);
        this.question = question;
        this.word = word;
    }

    /**
     * The question.
     *
     * @return its name
     */
    public String question() {
        return question;
    }

    /**
     * What was answered.
     *
     * @return the word as typed
     */
    public String word() {
        return word;
    }
}
