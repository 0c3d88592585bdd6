package trueseam.fitting.trial;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A question that tells apart causes with the same folds.
 *
 * @param key what answers call it, for example {@code pull-down}
 * @param asks the question
 * @param answers two or more
 * @param source codes of docs/sources.md; CP is common practice
 */
public record TellingQuestion(String key, String asks, List<TellingAnswer> answers, String source) {

    // One answer tells nothing.
    public TellingQuestion {
        answers = List.copyOf(answers);
        if (answers.size() < 2 || asks.isBlank()) {
            throw new IllegalArgumentException("the question " + key + " needs words and two answers");
        }
    }

    /**
     * An answer and what it means.
     *
     * @param key what it is called, for example {@code smooth}
     * @param words what is seen
     * @param speaksFor the causes that it speaks for
     * @param speaksAgainst the causes that it speaks against
     */
    public record TellingAnswer(String key, String words, Set<Cause> speaksFor, Set<Cause> speaksAgainst) {

        // An answer that speaks for and against the same cause says nothing.
        public TellingAnswer {
            speaksFor = Set.copyOf(speaksFor);
            speaksAgainst = Set.copyOf(speaksAgainst);
            Set<Cause> both = new HashSet<>(speaksFor);
            both.retainAll(speaksAgainst);
            if (!both.isEmpty()) {
                throw new IllegalArgumentException("the answer " + key + " speaks for and against "
                        + both.iterator().next().key());
            }
        }
    }

    /**
     * An answer by its key.
     *
     * @param answer the key
     * @return the answer, or nothing
     */
    public Optional<TellingAnswer> answer(String answer) {
        return answers.stream().filter(one -> one.key().equals(answer)).findFirst();
    }

    /**
     * Whether an answer raises one of two causes above the other.
     *
     * @param one a cause
     * @param other another
     * @return true if some answer speaks for one of them and against the other
     */
    public boolean tellsApart(Cause one, Cause other) {
        return answers.stream()
                .anyMatch(answer -> (answer.speaksFor().contains(one)
                                && answer.speaksAgainst().contains(other))
                        || (answer.speaksFor().contains(other)
                                && answer.speaksAgainst().contains(one)));
    }
}
