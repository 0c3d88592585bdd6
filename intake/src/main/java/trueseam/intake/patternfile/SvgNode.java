package trueseam.intake.patternfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An element of the drawing; elements of other programs are not among them.
 *
 * @param name local name in the SVG namespace, or one of {@link SvgTree#OWN} with that prefix
 * @param attributes those without a namespace
 * @param children in order
 * @param line where its start tag ends, from 1
 */
record SvgNode(String name, Map<String, String> attributes, List<SvgNode> children, int line) {

    Optional<String> attribute(String attribute) {
        return Optional.ofNullable(attributes.get(attribute));
    }

    boolean has(String attribute) {
        return attributes.containsKey(attribute);
    }

    /** Whether it only holds others together. */
    boolean isGroup() {
        return name.equals("g") || name.equals("a") || name.equals("switch");
    }
}
