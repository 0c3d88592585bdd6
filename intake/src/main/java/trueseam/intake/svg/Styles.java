package trueseam.intake.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an element looks like: attributes, rules of {@code style} elements with a simple selector (a name, a class, an id), and its own
 * {@code style}, in that order; colour, width, dashes and visibility are handed down to the elements within.
 */
final class Styles {

    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final List<String> HANDED_DOWN =
            List.of("stroke", "stroke-width", "stroke-dasharray", "fill", "visibility", "font-size");
    private static final List<String> OWN = List.of("display", "opacity");

    private record Rule(String selector, Map<String, String> values) {}

    private final List<Rule> rules = new ArrayList<>();

    Styles(Element root) {
        collect(root);
    }

    private void collect(Element element) {
        if (element.name().equals("style")) {
            String text = element.text().toString().replaceAll("(?s)/\\*.*?\\*/", "");
            Matcher rule = RULE.matcher(text);
            while (rule.find()) {
                Map<String, String> values = values(rule.group(2));
                for (String selector : rule.group(1).split(",")) {
                    rules.add(new Rule(selector.strip(), values));
                }
            }
        }
        element.children().forEach(this::collect);
    }

    private static Map<String, String> values(String text) {
        Map<String, String> values = new HashMap<>();
        for (String one : text.split(";")) {
            int colon = one.indexOf(':');
            if (colon > 0) {
                values.put(
                        one.substring(0, colon).strip().toLowerCase(Locale.ROOT),
                        one.substring(colon + 1).replace("!important", "").strip());
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
        for (List<String> names : List.of(HANDED_DOWN, OWN)) {
            for (String name : names) {
                if (!element.attribute(name).isEmpty()) {
                    all.put(name, element.attribute(name).strip());
                }
            }
        }
        List<String> classes = List.of(element.attribute("class").strip().split("\\s+"));
        for (String kind : List.of("name", "class", "id")) {
            for (Rule rule : rules) {
                boolean meant =
                        switch (kind) {
                            case "name" -> rule.selector.equals(element.name()) || rule.selector.equals("*");
                            case "class" ->
                                classes.stream()
                                        .anyMatch(c -> rule.selector.equals("." + c)
                                                || rule.selector.equals(element.name() + "." + c));
                            default -> rule.selector.equals("#" + element.attribute("id"));
                        };
                if (meant) {
                    all.putAll(rule.values);
                }
            }
        }
        all.putAll(values(element.attribute("style")));
        return all;
    }
}
