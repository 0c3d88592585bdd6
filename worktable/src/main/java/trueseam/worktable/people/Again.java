package trueseam.worktable.people;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trueseam.garment.body.MeasureAgain;
import trueseam.records.person.MeasuringDay;

/** When to measure somebody again, by the rule that this browser was told. */
public final class Again {

    private static final String COOKIE = "measure-again";

    private static final int A_YEAR_S = 365 * 24 * 3600;

    private Again() {}

    /**
     * The rule that this browser was told.
     *
     * @param context the request
     * @return the rule; the usual one where none was told
     */
    public static MeasureAgain rule(Context context) {
        String told = Optional.ofNullable(context.cookie(COOKIE)).orElse("");
        return told.matches("\\d{1,2}-\\d{1,2}")
                ? rule(told.substring(0, told.indexOf('-')), told.substring(told.indexOf('-') + 1))
                        .orElse(MeasureAgain.usual())
                : MeasureAgain.usual();
    }

    /**
     * Tells this browser a rule; what is none is not taken.
     *
     * @param context the request, with the months
     */
    public static void tell(Context context) {
        rule(context.formParam("months"), context.formParam("growing")).ifPresent(rule -> {
            Cookie cookie = new Cookie(COOKIE, rule.months() + "-" + rule.growingMonths());
            cookie.setMaxAge(A_YEAR_S);
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.STRICT);
            context.cookie(cookie);
        });
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
