package trueseam.garment.earlier;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trueseam.garment.ease.GarmentKind;

/**
 * One earlier fit of one person.
 *
 * @param person what the dressmaker calls this person
 * @param made when it was made, if known
 * @param worn whether the garment was worn, or its trial garment tried on, and found right
 * @param garment the kind of garment
 * @param pattern the pattern's name
 * @param size the size it was taken in; may be empty
 * @param table the size table it was drafted for; may be empty
 * @param measures what each measure came to
 * @param named alterations that were asked for by name, with their amounts
 */
public record EarlierFit(
        String person,
        Optional<LocalDate> made,
        boolean worn,
        GarmentKind garment,
        String pattern,
        String size,
        String table,
        List<MeasureThen> measures,
        List<NamedThen> named) {

    // Immutable.
    public EarlierFit {
        measures = List.copyOf(measures);
        named = List.copyOf(named);
    }

    /**
     * Whether both are fits of one pattern in one size, so that the later one takes the place of the earlier.
     *
     * @param other another fit
     * @return true if garment, pattern, size and table are the same
     */
    public boolean isOfSamePattern(EarlierFit other) {
        return garment == other.garment
                && pattern.equals(other.pattern)
                && size.equals(other.size)
                && table.equals(other.table);
    }

    /**
     * The size with its table, as a chart names it.
     *
     * @return for example {@code misses 14}; the pattern's name where no size is known
     */
    public String sizeLabel() {
        String label = (table + " " + size).strip();
        return label.isEmpty() ? pattern : label;
    }
}
