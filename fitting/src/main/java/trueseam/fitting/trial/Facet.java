package trueseam.fitting.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import trueseam.fitting.repertoire.Family;

/** What is asked about the folds themselves, in the order of asking: where, which way, slack or strain, when, and which of the rest. */
public enum Facet {
    /** The part of the garment. */
    PART("Which part of the garment is it?"),
    /** The place on it. */
    PLACE("Where are the folds?"),
    /** Which way the folds lie. */
    FOLDS("Which way do the folds lie?"),
    /** Slack or strain. */
    CLOTH("Is the cloth slack there, or does it strain?"),
    /** When it is seen. */
    WHEN("When is it seen?"),
    /** Which of what is left. */
    SEEN("Which of these is what you see?");

    private final String asks;

    Facet(String asks) {
        this.asks = asks;
    }

    /** One possible value: what an answer calls it, and in words. */
    record Value(String key, String words) {}

    /**
     * What is asked.
     *
     * @return a question
     */
    public String asks() {
        return asks;
    }

    /**
     * What an answer calls it.
     *
     * @return for example {@code part}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Facet> ofKey(String key) {
        return Arrays.stream(values()).filter(facet -> facet.key().equals(key)).findFirst();
    }

    /** Every value, in the order of showing. */
    List<Value> all() {
        return switch (this) {
            case PART -> values(Family.values(), Family::word, family -> "the " + family.word());
            case PLACE -> values(GarmentPlace.values(), GarmentPlace::key, GarmentPlace::words);
            case FOLDS -> values(FoldDirection.values(), FoldDirection::key, FoldDirection::words);
            case CLOTH -> values(Tension.values(), Tension::key, Tension::words);
            case WHEN -> values(Moment.values(), Moment::key, Moment::words);
            case SEEN ->
                TrialFolds.symptoms().stream()
                        .map(symptom -> new Value(Integer.toString(symptom.number()), symptom.seen()))
                        .toList();
        };
    }

    private static <E> List<Value> values(E[] all, Function<E, String> key, Function<E, String> words) {
        return Arrays.stream(all)
                .map(one -> new Value(key.apply(one), words.apply(one)))
                .toList();
    }

    private Stream<String> keys(Symptom symptom) {
        return switch (this) {
            case PART -> symptom.families().stream().map(Family::word);
            case PLACE -> symptom.places().stream().map(GarmentPlace::key);
            case FOLDS -> symptom.directions().stream().map(FoldDirection::key);
            case CLOTH -> symptom.tensions().stream().map(Tension::key);
            case WHEN -> symptom.moments().stream().map(Moment::key);
            case SEEN -> Stream.of(Integer.toString(symptom.number()));
        };
    }

    /** Whether an answer lets a symptom stay. */
    boolean allows(Symptom symptom, String answer) {
        return keys(symptom).anyMatch(answer::equals);
    }

    /** Whether a value belongs to parts of the garment. */
    boolean isOf(Set<Family> parts, Value value) {
        return switch (this) {
            case PART -> parts.stream().anyMatch(family -> family.word().equals(value.key()));
            case PLACE ->
                Arrays.stream(GarmentPlace.values())
                        .anyMatch(place -> place.key().equals(value.key()) && parts.contains(place.family()));
            case FOLDS, CLOTH, WHEN, SEEN -> true;
        };
    }
}
