package trueseam.worktable.studio;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import trueseam.records.RecordBook;
import trueseam.records.account.Account;
import trueseam.worktable.page.Pages;

/** The screens of a studio. */
public final class StudioScreens {

    private StudioScreens() {}

    /**
     * What they work with.
     *
     * @param book gives the record book, once it is open
     * @param gate who is let in
     * @param seats whose rows are reached
     * @param pages how pages are drawn for nobody
     * @param reach from where it is reached
     */
    public record Rooms(Supplier<RecordBook> book, Gate gate, StudioSeats seats, Pages pages, Reach reach) {

        /** Draws a page for whoever asks; {@code said} is what went wrong, or empty. */
        void show(Context context, String template, String said, Map<String, Object> values) {
            Optional<Account> account = gate.account(context);
            Pages drawn = account.map(who -> seats.pages(context, who, "")).orElseGet(() -> pages);
            Map<String, Object> all = new HashMap<>(values);
            all.put("frame", drawn.frame());
            all.put("said", said);
            if (!said.isEmpty()) {
                context.status(422);
            }
            context.html(drawn.draw("studio/" + template + ".jte", all));
        }
    }

    /**
     * Names the addresses.
     *
     * @param routes the server's routes
     * @param rooms what the screens work with
     */
    public static void answer(RoutesConfig routes, Rooms rooms) {
        new SignInScreen(rooms).answer(routes);
        new AccountsScreen(rooms).answer(routes);
        new ClassesScreen(rooms).answer(routes);
        new SharingScreen(rooms).answer(routes);
    }

    static String field(Context context, String name) {
        return Optional.ofNullable(context.formParam(name)).orElse("");
    }

    /** An account's number in an address. */
    static long number(String text) {
        return text.matches("\\d{1,18}") ? Long.parseLong(text) : -1;
    }
}
