package trueseam.fitting.standing;

/** Evidence that cannot be weighed together; the message is one sentence. */
public final class EvidenceException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    EvidenceException(String sentence) {
        super(sentence);
    }
}
