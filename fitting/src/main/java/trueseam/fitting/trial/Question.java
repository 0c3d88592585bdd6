package trueseam.fitting.trial;

import java.util.List;

/**
 * The next question worth asking.
 *
 * @param key what answers call it
 * @param asks the question
 * @param why why it is asked now
 * @param answers what may be answered; {@link GuidedReading#UNSURE} may be answered too
 * @param source who says so; empty for a question about the folds themselves
 */
public record Question(String key, String asks, String why, List<Answer> answers, String source) {

    // Immutable.
    public Question {
        answers = List.copyOf(answers);
    }

    /**
     * One answer.
     *
     * @param key what it is called
     * @param words what it says
     * @param meaning what it would mean: what it leaves, or which causes it speaks for and against
     */
    public record Answer(String key, String words, String meaning) {}
}
