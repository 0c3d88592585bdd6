package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody says about how the pages go together.
 *
 * @param layout the layout, if said
 * @param overlapMm how far neighbours overlap, mm, if said
 */
public record TileChoices(Optional<Layout> layout, OptionalDouble overlapMm) {

    /** Nothing said. */
    public static final TileChoices NONE = new TileChoices(Optional.empty(), OptionalDouble.empty());

    private static final Pattern SIZE = Pattern.compile("\\s*(\\d{1,3})\\s*[x\u00d7*]\\s*(\\d{1,3})\\s*");

    /** A layout that was said. */
    public sealed interface Layout {}

    /**
     * So many pages side by side and so many below each other, in the order of the file.
     *
     * @param across how many side by side
     * @param down how many below each other
     */
    public record Size(int across, int down) implements Layout {}

    /**
     * Every page by its number in the file.
     *
     * @param rows from the top; 0 where no page lies
     */
    public record Rows(List<List<Integer>> rows) implements Layout {

        /** Does not change. */
        public Rows {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Reads a layout as it is typed.
     *
     * @param text such as {@code 4x3} (4 across, 3 down) or {@code 1 2 3 / 4 5 -}
     * @return the layout, or nothing if it cannot be read so, or a page is named twice
     */
    public static Optional<Layout> layout(String text) {
        Matcher size = SIZE.matcher(text);
        if (size.matches()) {
            int across = Integer.parseInt(size.group(1));
            int down = Integer.parseInt(size.group(2));
            return across > 0 && down > 0 ? Optional.of(new Size(across, down)) : Optional.empty();
        }
        List<List<Integer>> rows = new ArrayList<>();
        Set<Integer> named = new HashSet<>();
        for (String line : text.split("/", -1)) {
            List<Integer> row = new ArrayList<>();
            for (String word : line.strip().split("[\\s,]+")) {
                boolean page = word.matches("[1-9]\\d{0,3}");
                boolean again = page && !named.add(Integer.parseInt(word));
                if (again || (!page && !word.equals("-"))) {
                    return Optional.empty();
                }
                row.add(page ? Integer.parseInt(word) : 0);
            }
            rows.add(row);
        }
        return named.isEmpty() ? Optional.empty() : Optional.of(new Rows(rows));
    }
}
