package trueseam.garment.size;

/**
 * The figure type a table is for.
 *
 * @param type its name in the trade, such as {@code Misses}
 * @param statedHeight the height the table is for, as its publisher writes it, or empty when it states none
 */
public record Figure(String type, String statedHeight) {}
