package trueseam.intake.pdf;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary;

/**
 * The layers that the drawing stands in, one within the other (ISO 32000-1, 8.11: optional content groups, and membership dictionaries that
 * name several). Marked content that is no layer counts as a level without a name.
 */
final class Layering {

    private final Deque<String> names = new ArrayDeque<>();
    private String joined = "";

    void enter(PDPropertyList properties) {
        names.push(name(properties));
        join();
    }

    void leave() {
        names.poll();
        join();
    }

    /** The names from the outside in, joined by a slash; empty outside all layers. */
    String name() {
        return joined;
    }

    private void join() {
        Iterable<String> outsideIn = names::descendingIterator;
        StringBuilder text = new StringBuilder();
        for (String name : outsideIn) {
            if (!name.isEmpty()) {
                text.append(text.isEmpty() ? "" : "/").append(name);
            }
        }
        joined = text.toString();
    }

    private static String name(PDPropertyList properties) {
        if (properties instanceof PDOptionalContentGroup group) {
            return group.getName() == null ? "" : group.getName();
        }
        if (properties instanceof PDOptionalContentMembershipDictionary several) {
            return several.getOCGs().stream()
                    .filter(Objects::nonNull)
                    .map(Layering::name)
                    .filter(n -> !n.isEmpty())
                    .collect(Collectors.joining("+"));
        }
        return "";
    }
}
