package trueseam.fitting.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Variant;
import trueseam.garment.table.ResourceTable;

/**
 * Everything that the program knows of folds on a trial garment: symptoms, causes, telling questions.
 *
 * <p>Laws, checked when the tables are read: (1) every cause that a symptom or an answer names is there; (2) every change of a cause is
 * an alteration of the repertoire that can go that way; (3) no key or number stands twice.
 */
public final class TrialFolds {

    private static final Map<String, Cause> CAUSES = readCauses();
    private static final List<Symptom> SYMPTOMS = readSymptoms();
    private static final List<TellingQuestion> QUESTIONS = readQuestions();

    private TrialFolds() {}

    /**
     * Every symptom.
     *
     * @return by number
     */
    public static List<Symptom> symptoms() {
        return SYMPTOMS;
    }

    /**
     * The symptom of a number.
     *
     * @param number its number
     * @return the symptom, or nothing
     */
    public static Optional<Symptom> symptom(int number) {
        return SYMPTOMS.stream().filter(one -> one.number() == number).findFirst();
    }

    /**
     * Every cause.
     *
     * @return in the order of the table
     */
    public static List<Cause> causes() {
        return List.copyOf(CAUSES.values());
    }

    /**
     * The cause of a key.
     *
     * @param key for example {@code sway-back}
     * @return the cause, or nothing
     */
    public static Optional<Cause> cause(String key) {
        return Optional.ofNullable(CAUSES.get(key));
    }

    /**
     * Every question that tells causes apart.
     *
     * @return in the order of the table
     */
    public static List<TellingQuestion> questions() {
        return QUESTIONS;
    }

    private static Map<String, Cause> readCauses() {
        Map<String, Cause> causes = new LinkedHashMap<>();
        for (Map<String, String> row : ResourceTable.read(TrialFolds.class, "causes.csv")) {
            List<Remedy> remedies = parted(row.get("changes"), "\\|").stream()
                    .map(TrialFolds::remedy)
                    .toList();
            Cause cause = new Cause(row.get("key"), row.get("words"), remedies, row.get("note"));
            if (causes.put(cause.key(), cause) != null) {
                throw new IllegalStateException("causes.csv: " + cause.key() + " stands twice");
            }
        }
        return causes;
    }

    private static Remedy remedy(String text) {
        String name = text.substring(0, text.length() - 1).strip();
        int way = name.indexOf('/');
        Entry entry = Repertoire.named(way < 0 ? name : name.substring(0, way))
                .orElseThrow(() -> new IllegalStateException("causes.csv: there is no alteration " + name));
        Variant variant = entry.variant(way < 0 ? "" : name.substring(way + 1))
                .orElseThrow(() -> new IllegalStateException("causes.csv: there is no way " + name));
        return switch (text.charAt(text.length() - 1)) {
            case '+' -> new Remedy(entry, variant, true);
            case '-' -> new Remedy(entry, variant, false);
            default -> throw new IllegalStateException("causes.csv: + or - is wanted at the end of " + text);
        };
    }

    private static List<Symptom> readSymptoms() {
        List<Symptom> symptoms = new ArrayList<>();
        for (Map<String, String> row : ResourceTable.read(TrialFolds.class, "symptoms.csv")) {
            symptoms.add(new Symptom(
                    Integer.parseInt(row.get("number")),
                    set(row.get("places"), GarmentPlace.class),
                    set(row.get("directions"), FoldDirection.class),
                    set(row.get("tensions"), Tension.class),
                    set(row.get("moments"), Moment.class),
                    row.get("seen"),
                    row.get("tried"),
                    named(row.get("causes")),
                    row.get("source")));
        }
        long numbers = symptoms.stream().map(Symptom::number).distinct().count();
        if (numbers != symptoms.size()) {
            throw new IllegalStateException("symptoms.csv: a number stands twice");
        }
        return List.copyOf(symptoms);
    }

    private static List<TellingQuestion> readQuestions() {
        Map<String, List<Map<String, String>>> byKey = ResourceTable.read(TrialFolds.class, "questions.csv").stream()
                .collect(Collectors.groupingBy(
                        row -> row.get("question"), LinkedHashMap::new, Collectors.toUnmodifiableList()));
        List<TellingQuestion> questions = new ArrayList<>();
        byKey.forEach((key, rows) -> questions.add(new TellingQuestion(
                key,
                rows.get(0).get("asks"),
                rows.stream()
                        .map(row -> new TellingQuestion.TellingAnswer(
                                row.get("answer"),
                                row.get("words"),
                                Set.copyOf(named(row.get("for"))),
                                Set.copyOf(named(row.get("against")))))
                        .toList(),
                rows.get(0).get("source"))));
        return List.copyOf(questions);
    }

    private static List<Cause> named(String keys) {
        return parted(keys, " ").stream()
                .map(key -> cause(key).orElseThrow(() -> new IllegalStateException("there is no cause " + key)))
                .toList();
    }

    private static <E extends Enum<E>> Set<E> set(String words, Class<E> type) {
        Function<String, E> named = word -> Enum.valueOf(type, word);
        return parted(words, " ").stream().map(named).collect(Collectors.toCollection(() -> EnumSet.noneOf(type)));
    }

    private static List<String> parted(String text, String by) {
        return Arrays.stream(text.split(by))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
    }
}
