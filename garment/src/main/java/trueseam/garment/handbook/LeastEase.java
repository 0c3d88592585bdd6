package trueseam.garment.handbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.table.ResourceTable;

/**
 * Whose least ease counts at bust, waist and hip. Where the chosen source says nothing of a garment, the table of wearing ease does.
 *
 * @param words the chosen source by place; a place that is not there keeps the table of wearing ease
 */
public record LeastEase(Map<Place, String> words) {

    /** Where sources disagree. */
    public enum Place {
        /** Round the bust. */
        BUST(Measure.BUST_GIRTH, Measure.CHEST_GIRTH),
        /** Round the waist. */
        WAIST(Measure.WAIST_GIRTH),
        /** Round the hip. */
        HIP(Measure.HIP_GIRTH);

        private final Set<Measure> measures;

        Place(Measure... measures) {
            this.measures = Set.of(measures);
        }

        /**
         * The word shown and typed.
         *
         * @return for example {@code bust}
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Whether a garment goes round the body here.
         *
         * @param kind the garment
         * @return true if it has wearing ease here
         */
        public boolean isRound(GarmentKind kind) {
            return EaseTable.standard().entries().stream()
                    .anyMatch(entry -> entry.kind() == kind && measures.contains(entry.measure()));
        }

        /**
         * The place of a measure.
         *
         * @param measure a girth
         * @return its place, or nothing where sources agree or are silent
         */
        public static Optional<Place> of(Measure measure) {
            return Arrays.stream(values())
                    .filter(place -> place.measures.contains(measure))
                    .findFirst();
        }

        /**
         * The place of a word.
         *
         * @param word as typed
         * @return the place, or nothing if there is none of that word
         */
        public static Optional<Place> ofWord(String word) {
            return Arrays.stream(values())
                    .filter(place -> place.word().equalsIgnoreCase(word.strip()))
                    .findFirst();
        }
    }

    /** What one source says of one place of some garments. */
    private record Line(Place place, Set<GarmentKind> garments, EaseRow row, Answer answer) {}

    private static final List<Line> LINES = ResourceTable.read(LeastEase.class, "least-ease.csv").stream()
            .map(LeastEase::line)
            .toList();

    private static final Map<Place, Question> QUESTIONS =
            Arrays.stream(Place.values()).collect(Collectors.toUnmodifiableMap(place -> place, LeastEase::asked));

    /** The word of the usual answer: each garment by the table of wearing ease. */
    public static final String TABLE = "table";

    /** The table that ships, when nothing is chosen. */
    public static final LeastEase USUAL = new LeastEase(Map.of());

    // Immutable; every word is an answer.
    public LeastEase {
        Map<Place, String> kept = new EnumMap<>(Place.class);
        words.forEach((place, word) -> {
            Answer answer = question(place).answer(word);
            if (!answer.equals(question(place).answers().get(0))) {
                kept.put(place, answer.word());
            }
        });
        words = Collections.unmodifiableMap(kept);
    }

    private static Line line(Map<String, String> cells) {
        return new Line(
                Place.ofWord(cells.get("place")).orElseThrow(),
                Arrays.stream(cells.get("garments").split(" "))
                        .map(GarmentKind::valueOf)
                        .collect(Collectors.toUnmodifiableSet()),
                new EaseRow(mm(cells.get("least")), mm(cells.get("usual")), cells.get("source")),
                new Answer(cells.get("word"), cells.get("label"), cells.get("reason"), cells.get("source")));
    }

    private static double mm(String text) {
        return Length.parse(text, LengthUnit.INCH).mm();
    }

    /**
     * What can be chosen at a place.
     *
     * @param place where
     * @return the question; its first answer is the table of wearing ease
     */
    public static Question question(Place place) {
        return QUESTIONS.get(place);
    }

    private static Question asked(Place place) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        answers.put(
                TABLE,
                new Answer(
                        TABLE,
                        "the table of wearing ease",
                        "each garment by the publication that speaks of it, as the chart names it",
                        standard(place)));
        for (Line line : LINES) {
            if (line.place() == place) {
                answers.merge(line.answer().word(), line.answer(), LeastEase::together);
            }
        }
        return new Question(
                "least ease at the " + place.word(),
                "Whose least ease counts at the " + place.word() + "?",
                "Below it a difference is never left alone, and the ease profile calls the place tight; without the pattern's own"
                        + " ease, the usual ease of the same source is wanted.",
                List.copyOf(answers.values()));
    }

    private static Answer together(Answer one, Answer other) {
        return new Answer(one.word(), one.label(), one.reason(), one.source() + "; " + other.source());
    }

    private static String standard(Place place) {
        return EaseTable.standard().entries().stream()
                .filter(entry ->
                        Place.of(entry.measure()).equals(Optional.of(place)) && entry.measure() != Measure.CHEST_GIRTH)
                .map(entry -> entry.row().source())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /**
     * The same with a source chosen at one place.
     *
     * @param place where
     * @param word the source; empty or {@code table} for the table of wearing ease
     * @return the choice
     * @throws HandbookException naming the sources there are, if it is none of them
     */
    public LeastEase with(Place place, String word) {
        Map<Place, String> more = new EnumMap<>(Place.class);
        more.putAll(words);
        more.put(place, word);
        return new LeastEase(more);
    }

    /**
     * The answer that counts at a place.
     *
     * @param place where
     * @return the chosen source, or the table of wearing ease
     */
    public Answer answer(Place place) {
        return question(place).answer(words.getOrDefault(place, ""));
    }

    /**
     * What the chosen source says of a garment.
     *
     * @param place where
     * @param kind the garment
     * @return its ease; nothing where the table of wearing ease counts, because nothing was chosen or the source is silent
     */
    public Optional<EaseRow> chosen(Place place, GarmentKind kind) {
        return LINES.stream()
                .filter(line -> line.place() == place
                        && line.garments().contains(kind)
                        && line.answer().word().equals(words.get(place)))
                .findFirst()
                .map(Line::row);
    }

    /**
     * The table of wearing ease with what was chosen.
     *
     * @return the table
     */
    public EaseTable table() {
        if (words.isEmpty()) {
            return EaseTable.standard();
        }
        List<EaseTable.Entry> entries = new ArrayList<>();
        for (EaseTable.Entry entry : EaseTable.standard().entries()) {
            EaseRow row = Place.of(entry.measure())
                    .flatMap(place -> chosen(place, entry.kind()))
                    .orElse(entry.row());
            entries.add(new EaseTable.Entry(entry.kind(), entry.measure(), entry.hipFromMm(), entry.hipToMm(), row));
        }
        return new EaseTable(entries);
    }
}
