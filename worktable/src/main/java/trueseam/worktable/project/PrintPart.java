package trueseam.worktable.project;

import java.util.Map;
import java.util.TreeMap;

/**
 * How the pattern is printed.
 *
 * @param choices by name, such as {@code paper}; a missing one is the usual
 */
public record PrintPart(Map<String, String> choices) {

    /** What is not there is empty. */
    public PrintPart {
        choices = choices == null ? Map.of() : java.util.Collections.unmodifiableMap(new TreeMap<>(choices));
    }

    /**
     * The usual.
     *
     * @return nothing chosen
     */
    public static PrintPart empty() {
        return new PrintPart(Map.of());
    }
}
