package trueseam.garment.blend;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which size is wanted at which level, such as {@code bust 14, waist 16, hip 18}.
 *
 * <p>Above the first level that is named its size holds, below the last one that one's; between two that are named the line goes over evenly.
 *
 * @param said the sizes by level, at least one
 */
public record SizesByLevel(Map<BlendLevel, String> said) {

    private static final Pattern ONE = Pattern.compile("\\s*([\\p{L}][\\p{L} ]*?)\\s*[ :=]\\s*(\\S.*?)\\s*");

    /** Does not change. */
    public SizesByLevel {
        if (said.isEmpty()) {
            throw new IllegalArgumentException("no level is named");
        }
        said = Map.copyOf(new EnumMap<>(said));
    }

    /**
     * Reads what somebody wrote.
     *
     * @param text levels with their sizes, parted by commas
     * @return the sizes by level, or nothing where the text is one size and names no level
     */
    public static Optional<SizesByLevel> parse(String text) {
        Map<BlendLevel, String> said = new EnumMap<>(BlendLevel.class);
        for (String part : text.split("[,;]")) {
            Matcher one = ONE.matcher(part);
            Optional<BlendLevel> level = Optional.empty();
            String size = "";
            // The longest words that name a level come first: "upper arm 14".
            for (int space = part.length() - 1; space > 0 && level.isEmpty(); space--) {
                if (" :=".indexOf(part.charAt(space)) >= 0) {
                    level = BlendLevel.ofWord(part.substring(0, space).replaceAll("[:=]", " "));
                    size = part.substring(space + 1).strip();
                }
            }
            if (level.isEmpty() || size.isEmpty() || !one.matches() || said.put(level.get(), size) != null) {
                return Optional.empty();
            }
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(new SizesByLevel(said));
    }

    /**
     * The same levels with their sizes called otherwise.
     *
     * @param name gives the new name of a size
     * @return the sizes by level
     */
    public SizesByLevel renamed(UnaryOperator<String> name) {
        Map<BlendLevel, String> renamed = new EnumMap<>(BlendLevel.class);
        said.forEach((level, size) -> renamed.put(level, name.apply(size)));
        return new SizesByLevel(renamed);
    }

    /**
     * The sizes that are wanted.
     *
     * @return each once, from the top
     */
    public List<String> sizes() {
        List<String> sizes = new ArrayList<>();
        for (BlendLevel level : BlendLevel.values()) {
            if (said.containsKey(level) && !sizes.contains(said.get(level))) {
                sizes.add(said.get(level));
            }
        }
        return List.copyOf(sizes);
    }

    /**
     * The size at a level.
     *
     * @param level which
     * @return its own if it is named, else that of the nearest level named above it, else below it; of a sleeve first what is named for the
     *     sleeve, then the frame's
     */
    public String at(BlendLevel level) {
        if (said.containsKey(level)) {
            return said.get(level);
        }
        if (level == BlendLevel.WRIST) {
            return at(BlendLevel.BICEP);
        }
        if (level == BlendLevel.BICEP) {
            return at(BlendLevel.FRAME);
        }
        Optional<String> nearest = Optional.empty();
        for (BlendLevel other : BlendLevel.values()) {
            boolean counts = said.containsKey(other) && (!other.isOfSleeve() || isOfSleeveOnly());
            if (counts && (nearest.isEmpty() || other.compareTo(level) < 0)) {
                nearest = Optional.of(said.get(other));
            }
        }
        return nearest.orElseThrow();
    }

    private boolean isOfSleeveOnly() {
        return said.keySet().stream().allMatch(BlendLevel::isOfSleeve);
    }

    boolean isNamed(BlendLevel level) {
        return said.containsKey(level);
    }

    /**
     * In words, as it is read.
     *
     * @return for example {@code bust 14, waist 16}
     */
    public String inWords() {
        List<String> parts = new ArrayList<>();
        for (BlendLevel level : BlendLevel.values()) {
            if (said.containsKey(level)) {
                parts.add(level.word() + " " + said.get(level));
            }
        }
        return String.join(", ", parts);
    }
}
