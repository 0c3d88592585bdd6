package trueseam.records.person;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One reading, as it was typed and as it was understood.
 *
 * @param measure the measure's standard term
 * @param side {@code left}, {@code right}, or empty
 * @param typed what was typed
 * @param unit the unit of a bare number, {@code in} or {@code cm}
 * @param origin empty for the tape; {@code stand-in}, {@code estimated} or {@code table}
 * @param note anything else
 * @param mm millimetres; empty if what was typed is no length
 */
public record TapeReading(
        String measure, String side, String typed, String unit, String origin, String note, OptionalDouble mm) {

    /** Nothing is null. */
    public TapeReading {
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(typed, "typed");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(mm, "mm");
    }

    /**
     * What tells this reading from others of a day.
     *
     * @return measure and side
     */
    public String place() {
        return measure + "/" + side;
    }
}
