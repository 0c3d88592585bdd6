package trueseam.fitting.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trueseam.fitting.repertoire.Family;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * The folds of a trial garment read step by step: answers so far give the symptoms that are left, the causes in order of likelihood, and
 * the next question worth asking.
 *
 * <p>Laws: (1) an answer never adds a symptom; (2) "unsure" changes nothing; (3) a question is asked only if one of its answers would
 * leave fewer symptoms, or raise one of the leading causes above another; (4) the order of answers does not matter.
 */
public final class GuidedReading {

    /** The answer that leaves all open. */
    public static final String UNSURE = "unsure";

    /** So few symptoms are told faster by reading them than by more questions: ours. */
    private static final int TOLD_BY_READING = 4;

    private final Optional<Pattern> pattern;
    private final Map<String, String> answers;
    private final List<Symptom> symptoms;
    private final CauseRanking ranking;

    private GuidedReading(Optional<Pattern> pattern, Map<String, String> answers) {
        this.pattern = pattern;
        this.answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        Set<Family> parts = partsOf(pattern);
        this.symptoms = TrialFolds.symptoms().stream()
                .filter(symptom -> symptom.places().stream().anyMatch(place -> parts.contains(place.family())))
                .filter(symptom -> this.answers.entrySet().stream()
                        .allMatch(answer -> leaves(symptom, answer.getKey(), answer.getValue())))
                .toList();
        this.ranking = new CauseRanking(symptoms, telling(), pattern.map(Possible::in), part());
    }

    /**
     * A reading of any garment, before the first answer.
     *
     * @return the reading
     */
    public static GuidedReading ofAnyGarment() {
        return new GuidedReading(Optional.empty(), Map.of());
    }

    /**
     * A reading of one garment, before the first answer.
     *
     * @param pattern what the trial garment was cut from
     * @return the reading; it asks only about parts that the garment has
     */
    public static GuidedReading of(Pattern pattern) {
        return new GuidedReading(Optional.of(pattern), Map.of());
    }

    /**
     * The reading with one more answer; a question that was answered before is answered anew.
     *
     * @param question the question's key
     * @param answer the answer's key, or {@link #UNSURE}
     * @return the reading
     * @throws AnswerException if there is no such question or answer
     */
    public GuidedReading answered(String question, String answer) {
        if (!answer.equals(UNSURE)) {
            check(question, answer);
        } else if (Facet.ofKey(question).isEmpty() && telling(question).isEmpty()) {
            throw noQuestion(question);
        }
        Map<String, String> more = new LinkedHashMap<>(answers);
        more.put(question, answer);
        return new GuidedReading(pattern, more);
    }

    /**
     * The reading without one answer.
     *
     * @param question the question's key
     * @return the reading
     */
    public GuidedReading without(String question) {
        Map<String, String> fewer = new LinkedHashMap<>(answers);
        fewer.remove(question);
        return new GuidedReading(pattern, fewer);
    }

    /**
     * The answers so far.
     *
     * @return answer by question, in the order of answering
     */
    public Map<String, String> answers() {
        return answers;
    }

    /**
     * A question and its answer in words.
     *
     * @param asks the question
     * @param words the answer
     */
    public record Said(String asks, String words) {}

    /**
     * What an answer says in words.
     *
     * @param question the question's key
     * @param answer the answer's key, or {@link #UNSURE}
     * @return the question and the answer
     * @throws AnswerException if there is no such question or answer
     */
    public static Said said(String question, String answer) {
        Optional<Facet> facet = Facet.ofKey(question);
        String asks = facet.map(Facet::asks)
                .or(() -> telling(question).map(TellingQuestion::asks))
                .orElseThrow(() -> noQuestion(question));
        if (answer.equals(UNSURE)) {
            return new Said(asks, "I am not sure");
        }
        check(question, answer);
        return new Said(
                asks,
                facet.flatMap(one -> one.all().stream()
                                .filter(value -> value.key().equals(answer))
                                .map(Facet.Value::words)
                                .findFirst())
                        .or(() -> telling(question)
                                .flatMap(asked -> asked.answer(answer))
                                .map(TellingQuestion.TellingAnswer::words))
                        .orElseThrow());
    }

    /**
     * What the answers leave.
     *
     * @return symptoms by number
     */
    public List<Symptom> symptoms() {
        return symptoms;
    }

    /**
     * The causes of what is left.
     *
     * @return the likeliest first, those that answers speak against last
     */
    public List<RankedCause> causes() {
        return ranking.causes();
    }

    /**
     * The next question worth asking.
     *
     * @return nothing if no question of ours would change what is known
     */
    public Optional<Question> next() {
        return symptoms.size() > 1 ? narrowing().or(this::tellingApart) : tellingApart();
    }

    private Optional<Question> narrowing() {
        if (symptoms.size() <= TOLD_BY_READING) {
            return facet(Facet.SEEN);
        }
        return Stream.of(Facet.PART, Facet.PLACE, Facet.FOLDS, Facet.CLOTH, Facet.WHEN, Facet.SEEN)
                .map(this::facet)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Question> facet(Facet facet) {
        if (answers.containsKey(facet.key())) {
            return Optional.empty();
        }
        Set<Family> parts = parts();
        List<Facet.Value> values = facet.all().stream()
                .filter(value -> facet.isOf(parts, value))
                .filter(value -> symptoms.stream().anyMatch(symptom -> facet.allows(symptom, value.key())))
                .toList();
        List<Question.Answer> possible = new ArrayList<>();
        boolean splits = false;
        for (Facet.Value value : values) {
            long left = symptoms.stream()
                    .filter(symptom -> facet.allows(symptom, value.key()))
                    .count();
            splits |= left < symptoms.size();
            String meaning = facet == Facet.SEEN ? "" : "leaves " + left + " of " + symptoms.size();
            possible.add(new Question.Answer(value.key(), value.words(), meaning));
        }
        return splits
                ? Optional.of(new Question(facet.key(), facet.asks(), why(facet), possible, ""))
                : Optional.empty();
    }

    private String why(Facet facet) {
        return facet == Facet.SEEN
                ? "Only these are left; each has its own causes."
                : symptoms.size() + " things may be seen; this leaves fewer.";
    }

    private Optional<Question> tellingApart() {
        List<Cause> open = causes().stream()
                .filter(ranked -> !ranked.isSpokenAgainst())
                .map(RankedCause::cause)
                .toList();
        if (open.size() < 2) {
            return Optional.empty();
        }
        Cause first = open.get(0);
        for (Cause other : open.subList(1, open.size())) {
            for (TellingQuestion question : TrialFolds.questions()) {
                if (!answers.containsKey(question.key()) && question.tellsApart(first, other)) {
                    return Optional.of(asked(question, first, other));
                }
            }
        }
        return Optional.empty();
    }

    private static Question asked(TellingQuestion question, Cause first, Cause other) {
        return new Question(
                question.key(),
                question.asks(),
                "The folds are the same where " + first.words() + " and where " + other.words()
                        + "; this tells them apart.",
                question.answers().stream()
                        .map(answer -> new Question.Answer(answer.key(), answer.words(), meaning(answer)))
                        .toList(),
                question.source());
    }

    private static String meaning(TellingQuestion.TellingAnswer answer) {
        return "speaks for: " + words(answer.speaksFor()) + "; against: " + words(answer.speaksAgainst());
    }

    private static String words(Set<Cause> causes) {
        return causes.stream().map(Cause::words).sorted().collect(Collectors.joining(", or "));
    }

    private List<CauseRanking.Told> telling() {
        List<CauseRanking.Told> told = new ArrayList<>();
        answers.forEach((question, answer) -> telling(question).ifPresent(asked -> asked.answer(answer)
                .ifPresent(said -> told.add(new CauseRanking.Told(asked, said)))));
        return told;
    }

    private static Optional<TellingQuestion> telling(String key) {
        return TrialFolds.questions().stream()
                .filter(question -> question.key().equals(key))
                .findFirst();
    }

    private static boolean leaves(Symptom symptom, String question, String answer) {
        return answer.equals(UNSURE)
                || Facet.ofKey(question)
                        .map(facet -> facet.allows(symptom, answer))
                        .orElse(true);
    }

    private Optional<Family> part() {
        Set<Family> parts = parts();
        return parts.size() == 1 ? Optional.of(parts.iterator().next()) : Optional.empty();
    }

    /** The parts that are spoken of: that of the answers, else those that the garment has. */
    private Set<Family> parts() {
        String place = answers.getOrDefault(Facet.PLACE.key(), UNSURE);
        String part = answers.getOrDefault(Facet.PART.key(), UNSURE);
        return partsOf(pattern).stream()
                .filter(family -> part.equals(UNSURE) || family.word().equals(part))
                .filter(family -> place.equals(UNSURE)
                        || Stream.of(GarmentPlace.values())
                                .anyMatch(one -> one.key().equals(place) && one.family() == family))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Family.class)));
    }

    /**
     * The parts that folds may be seen on.
     *
     * @param pattern what the trial garment was cut from, if that is known
     * @return the parts that it has; all if it is not known
     */
    public static Set<Family> partsOf(Optional<Pattern> pattern) {
        return pattern.map(GuidedReading::partsOf).orElse(EnumSet.allOf(Family.class));
    }

    private static Set<Family> partsOf(Pattern pattern) {
        Set<Family> parts = EnumSet.noneOf(Family.class);
        for (Piece piece : pattern.pieces()) {
            PieceKind kind = piece.kind();
            if (kind.isUpper()) {
                parts.add(Family.BODICE);
            }
            if (kind.isSleeve()) {
                parts.add(Family.SLEEVE);
            }
            if (kind.isSkirt() || kind.isDress()) {
                parts.add(Family.SKIRT);
            }
            if (kind.isTrouser()) {
                parts.add(Family.TROUSERS);
            }
        }
        return parts;
    }

    private static void check(String question, String answer) {
        List<String> known = Facet.ofKey(question)
                .map(facet -> facet.all().stream().map(Facet.Value::key).toList())
                .or(() -> telling(question).map(asked -> asked.answers().stream()
                        .map(TellingQuestion.TellingAnswer::key)
                        .toList()))
                .orElseThrow(() -> noQuestion(question));
        if (!known.contains(answer)) {
            throw new AnswerException("\"" + answer + "\" is no answer to \"" + question + "\"; answer one of "
                    + String.join(", ", known) + ", or " + UNSURE + ".");
        }
    }

    private static AnswerException noQuestion(String question) {
        return new AnswerException("There is no question \"" + question + "\"; questions are "
                + Stream.concat(
                                Stream.of(Facet.values()).map(Facet::key),
                                TrialFolds.questions().stream().map(TellingQuestion::key))
                        .collect(Collectors.joining(", "))
                + ".");
    }
}
