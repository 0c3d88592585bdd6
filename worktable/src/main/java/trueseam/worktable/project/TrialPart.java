package trueseam.worktable.project;

import java.util.List;

/**
 * What was seen on the trial garment, sitting by sitting.
 *
 * @param sittings the sittings, the earliest first
 */
public record TrialPart(List<Sitting> sittings) {

    /**
     * One sitting.
     *
     * @param date ISO date, empty if not said
     * @param seen what was seen and pinned
     */
    public record Sitting(String date, List<Seen> seen) {

        /** What is not there is empty. */
        public Sitting {
            date = date == null ? "" : date;
            seen = seen == null ? List.of() : List.copyOf(seen);
        }
    }

    /**
     * One thing seen.
     *
     * @param symptom which symptom of the reading
     * @param cause the alteration that it was found to call for
     * @param amount as pinned, as typed
     * @param side {@code left}, {@code right} or empty
     * @param note anything else
     */
    public record Seen(String symptom, String cause, String amount, String side, String note) {

        /** What is not there is empty. */
        public Seen {
            symptom = symptom == null ? "" : symptom;
            cause = cause == null ? "" : cause;
            amount = amount == null ? "" : amount;
            side = side == null ? "" : side;
            note = note == null ? "" : note;
        }
    }

    /** What is not there is empty. */
    public TrialPart {
        sittings = sittings == null ? List.of() : List.copyOf(sittings);
    }

    /**
     * No sitting yet.
     *
     * @return none
     */
    public static TrialPart empty() {
        return new TrialPart(List.of());
    }
}
