package trueseam.worktable.person;

import java.util.ArrayList;
import java.util.List;
import trueseam.worktable.project.PersonPart.Typed;

/**
 * What is done to the typed readings of one day: every function gives a new list. A blank reading stands for a field that was opened
 * and not yet filled.
 */
final class Readings {

    private Readings() {}

    /** The readings of a measure on a side, in the order taken. */
    static List<Typed> of(List<Typed> all, String measure, String side) {
        return all.stream()
                .filter(typed -> typed.measure().equals(measure) && typed.side().equals(side))
                .toList();
    }

    /** Whether left and right are taken apart. */
    static boolean isApart(List<Typed> all, String measure) {
        return all.stream()
                .anyMatch(typed ->
                        typed.measure().equals(measure) && !typed.side().isEmpty());
    }

    /**
     * With a text in one field. What is typed anew is a reading of the tape, whatever stood there before.
     *
     * @param at which of the readings of that measure and side, 0 for the first; one beyond the last adds a reading
     */
    static List<Typed> typed(List<Typed> all, Typed typed, int at) {
        List<Typed> changed = new ArrayList<>(all);
        int found = 0;
        int last = all.size();
        for (int i = 0; i < all.size(); i++) {
            if (isSameField(all.get(i), typed)) {
                if (found == at) {
                    changed.set(i, typed);
                    return changed;
                }
                found++;
                last = i + 1;
            }
        }
        if (at <= found) {
            changed.add(last, typed);
        }
        return changed;
    }

    private static boolean isSameField(Typed a, Typed b) {
        return a.measure().equals(b.measure()) && a.side().equals(b.side());
    }

    /** With a blank field for another reading, after at least one. */
    static List<Typed> again(List<Typed> all, String measure, String side, String unit) {
        Typed blank = new Typed(measure, side, "", unit);
        int have = of(all, measure, side).size();
        List<Typed> changed = have == 0 ? typed(all, blank, 0) : all;
        return typed(changed, blank, Math.max(1, have));
    }

    /** Without one of the readings. */
    static List<Typed> without(List<Typed> all, String measure, String side, int at) {
        List<Typed> changed = new ArrayList<>(all);
        int found = 0;
        for (int i = 0; i < all.size(); i++) {
            Typed typed = all.get(i);
            if (typed.measure().equals(measure) && typed.side().equals(side) && found++ == at) {
                changed.remove(i);
                return changed;
            }
        }
        return changed;
    }

    /** With left and right apart: what was read for both stands on either side until one of them is typed over. */
    static List<Typed> apart(List<Typed> all, String measure, String unit) {
        List<Typed> changed = new ArrayList<>();
        for (Typed typed : all) {
            if (typed.measure().equals(measure) && typed.side().isEmpty()) {
                changed.add(onSide(typed, "left"));
                changed.add(onSide(typed, "right"));
            } else {
                changed.add(typed);
            }
        }
        for (String side : List.of("left", "right")) {
            if (of(changed, measure, side).isEmpty()) {
                changed.add(new Typed(measure, side, "", unit));
            }
        }
        return changed;
    }

    /** With one reading for both sides: that of the right, as handbooks measure it, or of the left where the right has none. */
    static List<Typed> together(List<Typed> all, String measure) {
        boolean right = of(all, measure, "right").stream()
                .anyMatch(typed -> !typed.text().isBlank());
        String kept = right ? "right" : "left";
        List<Typed> changed = new ArrayList<>();
        for (Typed typed : all) {
            boolean sided = typed.measure().equals(measure) && !typed.side().isEmpty();
            if (!sided) {
                changed.add(typed);
            } else if (typed.side().equals(kept) && !typed.text().isBlank()) {
                changed.add(onSide(typed, ""));
            }
        }
        return changed;
    }

    private static Typed onSide(Typed typed, String side) {
        return new Typed(typed.measure(), side, typed.text(), typed.unit(), typed.origin(), typed.note());
    }
}
