package trueseam.garment.handbook;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What handbooks answer differently.
 *
 * @param name what it is called where it is kept, such as {@code hip line}
 * @param asks the question
 * @param matters what depends on it
 * @param answers the answers; the first is the usual one
 */
public record Question(String name, String asks, String matters, List<Answer> answers) {

    // Immutable; a question that has one answer is none.
    public Question {
        answers = List.copyOf(answers);
        if (answers.size() < 2) {
            throw new IllegalArgumentException(name + " has no two answers");
        }
    }

    /**
     * The answer of a word.
     *
     * @param word as typed; empty for the usual answer
     * @return the answer
     * @throws HandbookException naming the words there are, if it is none of them
     */
    public Answer answer(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT).replace('_', '-');
        if (wanted.isEmpty()) {
            return answers.get(0);
        }
        return answers.stream()
                .filter(answer -> answer.word().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new HandbookException(
                        name,
                        word,
                        "The " + name + " cannot be \"" + word.strip() + "\"; write one of "
                                + answers.stream().map(Answer::word).collect(Collectors.joining(", ")) + "."));
    }
}
