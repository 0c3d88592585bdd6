package trueseam.worktable.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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
     * One thing seen, in the words of a line of the file of a sitting.
     *
     * @param symptom the number of the symptom
     * @param cause the key of the cause that was settled on
     * @param alteration the change, with + or -
     * @param amount as pinned or let out
     * @param as what the amount measures
     * @param side {@code both}, {@code left}, {@code right} or {@code centre}
     * @param note anything else
     */
    public record Seen(
            String symptom, String cause, String alteration, String amount, String as, String side, String note) {

        /** What is not there is empty. */
        public Seen {
            symptom = symptom == null ? "" : symptom;
            cause = cause == null ? "" : cause;
            alteration = alteration == null ? "" : alteration;
            amount = amount == null ? "" : amount;
            as = as == null ? "" : as;
            side = side == null ? "" : side;
            note = note == null ? "" : note;
        }
    }

    /** What is not there is empty. */
    public TrialPart {
        sittings = sittings == null ? List.of() : List.copyOf(sittings);
    }

    /**
     * The same with one more thing seen in the last sitting; the first thing seen begins the first sitting.
     *
     * @param one what was seen
     * @return the sittings
     */
    public TrialPart withSeen(Seen one) {
        List<Sitting> all = new ArrayList<>(sittings);
        Sitting last = all.isEmpty() ? new Sitting("", List.of()) : all.remove(all.size() - 1);
        List<Seen> seen = new ArrayList<>(last.seen());
        seen.add(one);
        all.add(new Sitting(last.date(), seen));
        return new TrialPart(all);
    }

    /**
     * The same with something seen written otherwise, or taken off.
     *
     * @param sitting which sitting, from 0
     * @param at which thing, from 0
     * @param how what stands there instead; nothing takes it off, and a sitting that is then empty with it
     * @return the sittings; the same if there is no such thing
     */
    public TrialPart withSeen(int sitting, int at, Function<Seen, Optional<Seen>> how) {
        if (sitting >= sittings.size() || at >= sittings.get(sitting).seen().size()) {
            return this;
        }
        List<Sitting> all = new ArrayList<>(sittings);
        List<Seen> seen = new ArrayList<>(all.get(sitting).seen());
        Optional<Seen> other = how.apply(seen.remove(at));
        other.ifPresent(one -> seen.add(at, one));
        if (seen.isEmpty()) {
            all.remove(sitting);
        } else {
            all.set(sitting, new Sitting(all.get(sitting).date(), seen));
        }
        return new TrialPart(all);
    }

    /**
     * The same with a sitting of another day.
     *
     * @param sitting which sitting, from 0
     * @param date ISO date, empty if not said
     * @return the sittings; the same if there is no such sitting
     */
    public TrialPart withDate(int sitting, String date) {
        if (sitting >= sittings.size()) {
            return this;
        }
        List<Sitting> all = new ArrayList<>(sittings);
        all.set(sitting, new Sitting(date, all.get(sitting).seen()));
        return new TrialPart(all);
    }

    /**
     * The same with another sitting begun; an empty one is not begun twice.
     *
     * @return the sittings
     */
    public TrialPart withSitting() {
        if (!sittings.isEmpty() && sittings.get(sittings.size() - 1).seen().isEmpty()) {
            return this;
        }
        List<Sitting> all = new ArrayList<>(sittings);
        all.add(new Sitting("", List.of()));
        return new TrialPart(all);
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
