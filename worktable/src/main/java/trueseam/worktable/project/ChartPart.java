package trueseam.worktable.project;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Her own decisions about the needs, as words.
 *
 * @param choices general choices by name, such as {@code rule}, {@code hem}, {@code cap}; a missing one is the usual
 * @param decisions by the measure's standard term: {@code leave}, {@code alter} or an amount
 * @param ease by the measure's standard term: an amount
 * @param asked alterations asked for by name
 */
public record ChartPart(
        Map<String, String> choices, Map<String, String> decisions, Map<String, String> ease, List<Asked> asked) {

    /**
     * An alteration asked for by name.
     *
     * @param entry its name in the repertoire
     * @param way the way of doing it; empty: the usual one
     * @param amount how much; empty where it is found from a measure
     * @param side {@code left}, {@code right} or empty
     */
    public record Asked(String entry, String way, String amount, String side) {

        /** What is not there is empty. */
        public Asked {
            way = way == null ? "" : way;
            amount = amount == null ? "" : amount;
            side = side == null ? "" : side;
        }
    }

    /** What is not there is empty. */
    public ChartPart {
        choices = copy(choices);
        decisions = copy(decisions);
        ease = copy(ease);
        asked = asked == null ? List.of() : List.copyOf(asked);
    }

    private static Map<String, String> copy(Map<String, String> map) {
        return map == null ? Map.of() : java.util.Collections.unmodifiableMap(new TreeMap<>(map));
    }

    /**
     * Nothing decided.
     *
     * @return nothing
     */
    public static ChartPart empty() {
        return new ChartPart(Map.of(), Map.of(), Map.of(), List.of());
    }

    /**
     * The same with one decision made or, with an empty word, taken back.
     *
     * @param measure the measure's standard term
     * @param decision {@code leave}, {@code alter}, an amount, or empty
     * @return the decisions
     */
    public ChartPart withDecision(String measure, String decision) {
        return new ChartPart(choices, put(decisions, measure, decision), ease, asked);
    }

    /**
     * The same with her own ease or, with an empty word, the usual one.
     *
     * @param measure the measure's standard term
     * @param amount the ease, or empty
     * @return the decisions
     */
    public ChartPart withEase(String measure, String amount) {
        return new ChartPart(choices, decisions, put(ease, measure, amount), asked);
    }

    /**
     * The same with a general choice made or, with an empty word, taken back.
     *
     * @param choice its name
     * @param word what is chosen
     * @return the decisions
     */
    public ChartPart withChoice(String choice, String word) {
        return new ChartPart(put(choices, choice, word), decisions, ease, asked);
    }

    /**
     * The same with other alterations asked for.
     *
     * @param other the alterations
     * @return the decisions
     */
    public ChartPart withAsked(List<Asked> other) {
        return new ChartPart(choices, decisions, ease, other);
    }

    private static Map<String, String> put(Map<String, String> map, String key, String word) {
        Map<String, String> changed = new TreeMap<>(map);
        if (word.isBlank()) {
            changed.remove(key);
        } else {
            changed.put(key, word.strip());
        }
        return changed;
    }
}
