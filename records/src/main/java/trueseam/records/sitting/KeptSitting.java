package trueseam.records.sitting;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One sitting.
 *
 * @param date as typed, ISO where it can be read; empty if not said
 * @param seen what was seen and pinned
 */
public record KeptSitting(String date, List<Seen> seen) {

    /**
     * One thing seen.
     *
     * @param symptom the number of the symptom
     * @param cause the key of the cause that was settled on
     * @param alteration the change, with + or -
     * @param amount as typed
     * @param amountMm millimetres; empty if what was typed is no length
     * @param measuredAs what the amount measures
     * @param side {@code both}, {@code left}, {@code right} or {@code centre}
     * @param note anything else
     */
    public record Seen(
            String symptom,
            String cause,
            String alteration,
            String amount,
            OptionalDouble amountMm,
            String measuredAs,
            String side,
            String note) {

        /** Nothing is null. */
        public Seen {
            Objects.requireNonNull(symptom, "symptom");
            Objects.requireNonNull(cause, "cause");
            Objects.requireNonNull(alteration, "alteration");
            Objects.requireNonNull(amount, "amount");
            Objects.requireNonNull(amountMm, "amountMm");
            Objects.requireNonNull(measuredAs, "measuredAs");
            Objects.requireNonNull(side, "side");
            Objects.requireNonNull(note, "note");
        }
    }

    /** Does not change. */
    public KeptSitting {
        Objects.requireNonNull(date, "date");
        seen = List.copyOf(seen);
    }
}
