package trueseam.intake.apparel;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The pattern pieces of a file that keeps to the apparel convention, every size a piece of its own.
 *
 * @param style what the file says of the whole style, such as {@code Style Name}, {@code Sample Size} and {@code Grade Rule Table}; keys
 *     are compared without case
 * @param pieces the pieces in the order of the file; none if the file does not keep to the convention
 */
public record ApparelPieces(Map<String, String> style, List<ApparelPiece> pieces) {

    /** Of a file that does not keep to the convention. */
    public static final ApparelPieces NONE = new ApparelPieces(Map.of(), List.of());

    /** Does not change. */
    public ApparelPieces {
        Map<String, String> sorted = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        sorted.putAll(style);
        style = Collections.unmodifiableMap(sorted);
        pieces = List.copyOf(pieces);
    }

    /**
     * The sizes that are drawn.
     *
     * @return each once, in the order of the file
     */
    public List<String> sizes() {
        return pieces.stream().map(ApparelPiece::size).distinct().toList();
    }

    /**
     * The pieces of one size.
     *
     * @param size as in {@link #sizes}
     * @return its pieces in the order of the file
     */
    public List<ApparelPiece> ofSize(String size) {
        return pieces.stream().filter(piece -> piece.size().equals(size)).toList();
    }

    /**
     * The size that the rules start from.
     *
     * @return what the file calls its sample or base size, if it says so
     */
    public Optional<String> sampleSize() {
        return Optional.ofNullable(style.getOrDefault("Sample Size", style.get("Base Size")));
    }
}
