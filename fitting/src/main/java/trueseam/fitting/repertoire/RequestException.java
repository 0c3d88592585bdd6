package trueseam.fitting.repertoire;

/** An alteration was asked for in a way that cannot be done; the sentence says what to write instead. */
public class RequestException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Says why.
     *
     * @param sentence what is wrong and what to do
     */
    public RequestException(String sentence) {
        super(sentence);
    }
}
