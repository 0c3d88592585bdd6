package trueseam.worktable.project;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which pattern is fitted.
 *
 * @param way {@code draft} (a shell is drafted), {@code file} (a pattern file was brought), {@code drawing} (a drawing was brought in and is
 *     confirmed), {@code paper} (only the flat
 *     measures of a paper pattern are known), or empty
 * @param garment what is drafted, or what the paper pattern is: a word of the garments that can be drafted
 * @param with small pieces drafted with it
 * @param table the size table; empty: as the pattern file states
 * @param size the size; empty: the one chosen by the frame
 * @param file the shelf mark of the pattern file's text
 * @param fileName what the file was called
 * @param flat typed flat measures by standard term
 * @param drawing the drawing that it was brought in from
 */
public record PatternPart(
        String way,
        String garment,
        List<String> with,
        String table,
        String size,
        String file,
        String fileName,
        Map<String, String> flat,
        DrawingPart drawing) {

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
        drawing = drawing == null ? DrawingPart.empty() : drawing;
    }

    /**
     * A pattern that was not brought in from a drawing.
     *
     * @param way how it came
     * @param garment what is drafted
     * @param with small pieces drafted with it
     * @param table the size table
     * @param size the size
     * @param file the shelf mark of the pattern file's text
     * @param fileName what the file was called
     * @param flat typed flat measures by standard term
     */
    public PatternPart(
            String way,
            String garment,
            List<String> with,
            String table,
            String size,
            String file,
            String fileName,
            Map<String, String> flat) {
        this(way, garment, with, table, size, file, fileName, flat, DrawingPart.empty());
    }

    /**
     * The same with another drawing, or with other things said about it.
     *
     * @param other the drawing
     * @return the part; the pattern that was confirmed before stays
     */
    public PatternPart with(DrawingPart other) {
        return new PatternPart("drawing", "", List.of(), table, size, file, fileName, flat, other);
    }

    /**
     * What was brought in is right and is the pattern.
     *
     * @param mark the shelf mark of the pattern file's text
     * @return the part
     */
    public PatternPart confirmed(String mark) {
        return new PatternPart("drawing", "", List.of(), "", "", mark, drawing.fileName(), flat, drawing.right());
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
