package trueseam.garment.measure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Finds measures by what people call them. */
final class MeasureNames {
    private static final Map<String, Measure> BY_NAME = index();

    private MeasureNames() {}

    static Optional<Measure> find(String name) {
        return Optional.ofNullable(BY_NAME.get(bare(name)));
    }

    /** The measure with the most alike name, if no more than a third of its letters differ. */
    static Optional<Measure> nearest(String name) {
        String wanted = bare(name);
        return BY_NAME.entrySet().stream()
                .map(entry -> Map.entry(entry.getValue(), distance(wanted, entry.getKey())))
                .filter(entry -> 3 * entry.getValue() <= wanted.length())
                .min(Comparator.<Map.Entry<Measure, Integer>>comparingInt(Map.Entry::getValue)
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey);
    }

    /** Letters and digits only, in lower case, without what stands in brackets: "Bust girth (in)" is the bust girth. */
    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\(.*?\\)|[^\\p{L}\\p{N}]", "");
    }

    private static Map<String, Measure> index() {
        Map<String, Measure> index = new HashMap<>();
        for (Measure measure : Measure.values()) {
            for (String name : List.of(measure.term(), measure.workroomLabel(), measure.name())) {
                Measure other = index.putIfAbsent(bare(name), measure);
                if (other != null && other != measure) {
                    throw new IllegalStateException("\"" + name + "\" names both " + other + " and " + measure);
                }
            }
        }
        return Map.copyOf(index);
    }

    /** How many letters must be put in, taken out or changed to turn one word into the other (Levenshtein 1966). */
    private static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        Arrays.setAll(row, j -> j);
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
