package trueseam.records.person;

import java.util.List;
import java.util.Objects;

/**
 * A day on which somebody was measured.
 *
 * @param date as typed, ISO where it can be read; empty if not said
 * @param note anything else
 * @param readings what was read
 */
public record MeasuringDay(String date, String note, List<TapeReading> readings) {

    /** Does not change. */
    public MeasuringDay {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(note, "note");
        readings = List.copyOf(readings);
    }
}
