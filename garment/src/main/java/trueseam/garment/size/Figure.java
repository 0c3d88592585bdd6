package trueseam.garment.size;

/**
 * The figure type a table is for.
 *
 * @param type its name in the trade, such as {@code Misses}
 * @param statedHeight the height the table is for, as its publisher writes it, or empty when it states none
 */
public record Figure(String type, String statedHeight) {

    /**
     * Takes the blanks off both.
     *
     * @param type as of the record
     * @param statedHeight as of the record
     * @throws IllegalArgumentException when one has more than one line
     */
    public Figure {
        type = type.strip();
        statedHeight = statedHeight.strip();
        if (type.lines().count() > 1 || statedHeight.lines().count() > 1) {
            throw new IllegalArgumentException("figure type and stated height are of one line each");
        }
    }
}
