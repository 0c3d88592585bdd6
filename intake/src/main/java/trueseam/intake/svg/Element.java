package trueseam.intake.svg;

import java.util.List;
import java.util.Map;

/**
 * One element.
 *
 * @param name its local name
 * @param attributes by local name; of two with one name the one without namespace
 * @param children the elements within it
 * @param text its own text
 * @param line where it begins
 */
record Element(String name, Map<String, String> attributes, List<Element> children, StringBuilder text, int line) {

    String attribute(String wanted) {
        return attributes.getOrDefault(wanted, "");
    }

    String place() {
        String id = attribute("id");
        return "line " + line + ", element " + name + (id.isEmpty() ? "" : " \"" + id + "\"");
    }
}
