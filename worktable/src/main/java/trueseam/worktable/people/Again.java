package trueseam.worktable.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trueseam.garment.body.MeasureAgain;
import trueseam.records.Drawer;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.Reminding;

/** When to measure somebody again, by the rule that the owner told the record book. */
public final class Again {

    private Again() {}

    /**
     * The rule of an owner.
     *
     * @param drawer what she has in the record book
     * @return the rule; the usual one where none was told
     */
    public static MeasureAgain rule(Drawer drawer) {
        return drawer.reminding()
                .told()
                .map(told -> new MeasureAgain(told.months(), told.growingMonths()))
                .orElse(MeasureAgain.usual());
    }

    /**
     * Keeps a rule; what is none is not taken.
     *
     * @param drawer what the owner has in the record book
     * @param months what was typed for whoever does not grow
     * @param growing what was typed for whoever grows
     * @return whether it was taken
     */
    public static boolean tell(Drawer drawer, String months, String growing) {
        Optional<MeasureAgain> rule = rule(months, growing);
        rule.ifPresent(told -> drawer.reminding().tell(new Reminding.Pause(told.months(), told.growingMonths())));
        return rule.isPresent();
    }

    private static Optional<MeasureAgain> rule(String months, String growing) {
        try {
            return Optional.of(new MeasureAgain(Integer.parseInt(months), Integer.parseInt(growing)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /**
     * The note for one person.
     *
     * @param days her days
     * @param rule the rule
     * @param today the day
     * @return that it is time, and why; empty while it is not
     */
    public static String note(List<MeasuringDay> days, MeasureAgain rule, LocalDate today) {
        Optional<LocalDate> last = Trends.last(days);
        if (last.isEmpty()) {
            return "";
        }
        boolean growing = MeasureAgain.isGrowing(Trends.stature(Trends.of(days)));
        LocalDate due = rule.due(last.get(), growing);
        return today.isBefore(due)
                ? ""
                : "Measure again: last measured on " + last.get()
                        + (growing ? ", and growing by more than the tape may err" : "") + ".";
    }
}
