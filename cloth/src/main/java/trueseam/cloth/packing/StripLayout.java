package trueseam.cloth.packing;

import java.util.List;

/**
 * All parts laid.
 *
 * @param length how much of the strip is used, mm
 * @param placed every copy, the fixed ones first
 */
public record StripLayout(double length, List<Placed> placed) {

    /** Does not change. */
    public StripLayout {
        placed = List.copyOf(placed);
    }
}
