package trueseam.fitting.trial;

/** A question of the guided reading was answered with what it does not know. */
public final class AnswerException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    AnswerException(String sentence) {
        super(sentence);
    }
}
