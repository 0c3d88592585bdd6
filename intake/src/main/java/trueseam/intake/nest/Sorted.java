package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import trueseam.intake.drawing.Stroke;

/**
 * The lines of a drawing sorted by what they have in common, and the outlines that this gives.
 *
 * @param lines by what they have in common
 * @param kin outlines that are likely one piece in several sizes
 * @param shared lines that close outlines of other styles than their own
 */
record Sorted(Map<String, List<Stroke>> lines, List<Kin> kin, Set<Stroke> shared) {

    /** More kinds of lines than any pattern has sizes, twice over. */
    private static final int MOST_STYLES = 60;

    /** Lines sorted; those of the empty style belong to no size. */
    static Sorted by(List<Stroke> strokes, Function<Stroke, String> style) {
        Map<String, List<Stroke>> lines = new LinkedHashMap<>();
        for (Stroke stroke : strokes) {
            lines.computeIfAbsent(style.apply(stroke), k -> new ArrayList<>()).add(stroke);
        }
        if (lines.size() > MOST_STYLES) {
            return new Sorted(lines, List.of(), Set.of());
        }
        Map<String, List<Stroke>> helping = new LinkedHashMap<>();
        Set<Stroke> shared = shared(lines, helping);
        List<Ring> rings = new ArrayList<>();
        lines.forEach((name, own) -> {
            if (!name.isEmpty() || lines.size() == 1) {
                // A line that helps others may be drawn in this style by chance, or be this one's too: it is cut like
                // the others.
                List<Stroke> rest =
                        own.stream().filter(s -> !shared.contains(s)).toList();
                List<Stroke> help = new ArrayList<>(helping.get(name));
                help.retainAll(shared);
                own.stream().filter(shared::contains).forEach(help::add);
                rings.addAll(Ring.of(name, help.isEmpty() ? rest : Sharing.with(rest, help)));
            }
        });
        return new Sorted(lines, Kin.among(rings), shared);
    }

    /** Open lines that close what is drawn in other styles: of no size, or closing two styles and more. */
    private static Set<Stroke> shared(Map<String, List<Stroke>> lines, Map<String, List<Stroke>> helping) {
        Map<Stroke, Set<String>> closing = new LinkedHashMap<>();
        lines.forEach((name, own) -> {
            Set<Stroke> helpers = new LinkedHashSet<>();
            List<Stroke> loose = Ring.loose(own);
            lines.forEach((otherName, other) -> {
                if (!otherName.equals(name) && !loose.isEmpty() && (otherName.isEmpty() || !lines.containsKey(""))) {
                    List<Stroke> open =
                            other.stream().filter(s -> !s.path().isClosed()).toList();
                    loose.forEach(line -> helpers.addAll(Sharing.closing(line, open)));
                }
            });
            helping.put(name, List.copyOf(helpers));
            helpers.forEach(
                    s -> closing.computeIfAbsent(s, k -> new LinkedHashSet<>()).add(name));
        });
        Set<Stroke> shared = new LinkedHashSet<>();
        closing.forEach((stroke, names) -> {
            if (names.size() > 1 || lines.getOrDefault("", List.of()).contains(stroke)) {
                shared.add(stroke);
            }
        });
        return shared;
    }

    /** Pieces drawn in several sizes. */
    List<Kin> several() {
        return List.copyOf(Kin.several(kin));
    }

    /** Of the pieces in several sizes, those whose sizes are told apart. */
    long toldApart() {
        return several().stream().filter(Kin::isToldByStyle).count();
    }

    /** Each size's styles, the smallest size first: by its mean place among the sizes of each piece. */
    List<List<String>> sizes() {
        Map<List<String>, List<Double>> places = new LinkedHashMap<>();
        for (Kin one : several()) {
            List<List<Ring>> sizes = one.sizes();
            if (one.isToldByStyle()) {
                for (int i = 0; i < sizes.size(); i++) {
                    List<String> styles = sizes.get(i).stream()
                            .map(Ring::style)
                            .distinct()
                            .sorted()
                            .toList();
                    places.computeIfAbsent(styles, k -> new ArrayList<>()).add(i / (double) (sizes.size() - 1));
                }
            }
        }
        Map<List<String>, Double> mean = new LinkedHashMap<>();
        places.forEach((styles, at) ->
                mean.put(styles, at.stream().mapToDouble(v -> v).average().orElse(0)));
        return mean.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** How many sizes the pieces have that come in several, with how many pieces have so many. */
    TreeMap<Integer, Integer> counts() {
        TreeMap<Integer, Integer> counts = new TreeMap<>();
        several().forEach(k -> counts.merge(k.sizes().size(), 1, Integer::sum));
        return counts;
    }
}
