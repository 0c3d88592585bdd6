package trueseam.cloth.packing;

import java.util.List;
import java.util.Optional;
import trueseam.geometry.Point;

/**
 * A shape that is to be laid on a strip. The strip runs along x from 0 and is as wide as it is in y.
 *
 * @param name what it is called
 * @param outline its corners in order, the first not repeated; it does not cross itself
 * @param copies how many of it
 * @param ways how it may lie, at least one
 * @param onFold whether its lowest line lies on the strip's lower side, y = 0
 * @param matched a place of it that comes to lie in a rhythm, where the cloth has one
 * @param along the rhythm along the strip
 * @param across the rhythm across the strip
 */
public record StripPart(
        String name,
        List<Point> outline,
        int copies,
        List<Way> ways,
        boolean onFold,
        Point matched,
        Optional<Rhythm> along,
        Optional<Rhythm> across) {

    /** Checks. */
    public StripPart {
        outline = List.copyOf(outline);
        ways = List.copyOf(ways);
        if (outline.size() < 3 || copies < 1 || ways.isEmpty()) {
            throw new IllegalArgumentException(name + " needs three corners, a copy and a way to lie");
        }
    }

    /**
     * A shape that may lie anywhere.
     *
     * @param name what it is called
     * @param outline its corners
     * @param copies how many
     * @param ways how it may lie
     * @return the part
     */
    public static StripPart free(String name, List<Point> outline, int copies, List<Way> ways) {
        return new StripPart(name, outline, copies, ways, false, outline.get(0), Optional.empty(), Optional.empty());
    }
}
