package trueseam.worktable.project;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which pattern is fitted.
 *
 * @param way {@code draft} (a shell is drafted), {@code file} (a pattern file was brought), {@code paper} (only the flat
 *     measures of a paper pattern are known), or empty
 * @param garment what is drafted, or what the paper pattern is: a word of the garments that can be drafted
 * @param with small pieces drafted with it
 * @param table the size table; empty: as the pattern file states
 * @param size the size; empty: the one chosen by the frame
 * @param file the shelf mark of the pattern file's text
 * @param fileName what the file was called
 * @param flat typed flat measures by standard term
 */
public record PatternPart(
        String way,
        String garment,
        List<String> with,
        String table,
        String size,
        String file,
        String fileName,
        Map<String, String> flat) {

    /** What is not there is empty. */
    public PatternPart {
        way = way == null ? "" : way;
        garment = garment == null ? "" : garment;
        with = with == null ? List.of() : List.copyOf(with);
        table = table == null ? "" : table;
        size = size == null ? "" : size;
        file = file == null ? "" : file;
        fileName = fileName == null ? "" : fileName;
        flat = flat == null ? Map.of() : java.util.Collections.unmodifiableMap(new TreeMap<>(flat));
    }

    /**
     * No pattern yet.
     *
     * @return none
     */
    public static PatternPart empty() {
        return new PatternPart("", "", List.of(), "", "", "", "", Map.of());
    }
}
