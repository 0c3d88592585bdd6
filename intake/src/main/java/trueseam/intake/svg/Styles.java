package trueseam.intake.svg;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What an element looks like: attributes, rules of {@code style} elements with a simple selector (everything, a name, a class, a class of a
 * name, an id, the nearer to the element the stronger), and its own {@code style}, in that order; colour, width, dashes and visibility are
 * handed down to the elements within.
 */
final class Styles {

    private static final List<String> HANDED_DOWN =
            List.of("stroke", "stroke-width", "stroke-dasharray", "fill", "visibility", "font-size");
    private static final List<String> OWN = List.of("display", "opacity");
    private static final Set<String> KNOWN = known();

    /** Rules of one selector taken together: a later one wins, value by value. */
    private record Rule(int last, Map<String, String> values) {}

    private final Map<String, Rule> rules = new HashMap<>();
    private int count;

    Styles(Element root) {
        collect(root);
    }

    private static Set<String> known() {
        Set<String> known = new HashSet<>(HANDED_DOWN);
        known.addAll(OWN);
        return Set.copyOf(known);
    }

    private void collect(Element element) {
        if (element.name().equals("style")) {
            String text = withoutRemarks(element.text().toString());
            int at = 0;
            for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', at)) {
                int close = text.indexOf('}', open);
                if (close < 0) {
                    break;
                }
                add(text.substring(at, open), values(text.substring(open + 1, close)));
                at = close + 1;
            }
        }
        element.children().forEach(this::collect);
    }

    private void add(String selectors, Map<String, String> values) {
        for (String selector : selectors.split(",")) {
            Map<String, String> all = new HashMap<>();
            Rule before = rules.get(selector.strip());
            if (before != null) {
                all.putAll(before.values);
            }
            all.putAll(values);
            rules.put(selector.strip(), new Rule(count++, all));
        }
    }

    private static String withoutRemarks(String text) {
        StringBuilder plain = new StringBuilder();
        int at = 0;
        for (int open = text.indexOf("/*"); open >= 0; open = text.indexOf("/*", at)) {
            plain.append(text, at, open);
            int close = text.indexOf("*/", open + 2);
            at = close < 0 ? text.length() : close + 2;
        }
        return plain.append(text.substring(at)).toString();
    }

    private static Map<String, String> values(String text) {
        Map<String, String> values = new HashMap<>();
        for (String one : text.split(";")) {
            int colon = one.indexOf(':');
            String name = colon < 0 ? "" : one.substring(0, colon).strip().toLowerCase(Locale.ROOT);
            if (KNOWN.contains(name)) {
                String value = one.substring(colon + 1);
                int mark = value.indexOf('!'); // "!important"
                values.put(name, (mark < 0 ? value : value.substring(0, mark)).strip());
            }
        }
        return values;
    }

    /** What counts for an element within one that looks so. */
    Map<String, String> of(Element element, Map<String, String> around) {
        Map<String, String> all = new HashMap<>();
        for (String name : HANDED_DOWN) {
            if (around.containsKey(name)) {
                all.put(name, around.get(name));
            }
        }
        for (String name : KNOWN) {
            if (!element.attribute(name).isEmpty()) {
                all.put(name, element.attribute(name).strip());
            }
        }
        if (!rules.isEmpty()) {
            strongest(element).forEach(rule -> all.putAll(rule.values));
        }
        if (!element.attribute("style").isEmpty()) {
            all.putAll(values(element.attribute("style")));
        }
        return all;
    }

    /** The rules that mean an element, the strongest last. */
    private List<Rule> strongest(Element element) {
        List<Rule> strongest = new ArrayList<>();
        add(strongest, List.of("*"));
        add(strongest, List.of(element.name()));
        List<String> classes = List.of(element.attribute("class").strip().split("\\s+"));
        add(strongest, classes.stream().map(c -> "." + c).toList());
        add(strongest, classes.stream().map(c -> element.name() + "." + c).toList());
        add(strongest, List.of("#" + element.attribute("id")));
        return strongest;
    }

    private void add(List<Rule> strongest, List<String> selectors) {
        selectors.stream()
                .filter(rules::containsKey)
                .map(rules::get)
                .sorted(Comparator.comparingInt(Rule::last))
                .forEach(strongest::add);
    }
}
