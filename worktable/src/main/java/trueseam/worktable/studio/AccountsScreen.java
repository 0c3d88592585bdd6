package trueseam.worktable.studio;

import static trueseam.worktable.studio.StudioScreens.field;
import static trueseam.worktable.studio.StudioScreens.number;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Map;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;

/** The studio's owner makes accounts, gives out links for setting a password, and closes accounts. */
final class AccountsScreen {

    private final StudioScreens.Rooms rooms;

    AccountsScreen(StudioScreens.Rooms rooms) {
        this.rooms = rooms;
    }

    void answer(RoutesConfig routes) {
        routes.get("/accounts", context -> show(context, "", "", ""));
        routes.post("/accounts", this::add);
        routes.post("/accounts/{account}/invite", context -> {
            long id = number(context.pathParam("account"));
            invite(context, id);
        });
        routes.post("/accounts/{account}/closed", this::close);
        routes.post("/accounts/{account}/erase", this::erase);
    }

    private Accounts accounts() {
        return rooms.book().get().studio().accounts();
    }

    private void show(Context context, String said, String whom, String link) {
        rooms.show(
                context,
                "accounts",
                said,
                Map.of(
                        "accounts",
                        accounts().list(),
                        "erased",
                        accounts().erased().stream().map(AccountsScreen::day).toList(),
                        "whom",
                        whom,
                        "link",
                        link));
    }

    private void add(Context context) {
        try {
            Role role = Arrays.stream(Role.values())
                    .filter(one -> one.word().equals(field(context, "role")))
                    .findFirst()
                    .orElse(Role.STUDENT);
            invite(context, accounts().add(field(context, "called"), role).id());
        } catch (AccountException e) {
            show(context, e.getMessage(), "", "");
        }
    }

    private void invite(Context context, long id) {
        try {
            String token = accounts().invite(id);
            String name = accounts().find(id).map(Account::name).orElse("");
            show(context, "", name, rooms.reach().address(context.port()) + "invited/" + token);
        } catch (AccountException e) {
            show(context, e.getMessage(), "", "");
        }
    }

    private void close(Context context) {
        try {
            accounts()
                    .close(
                            number(context.pathParam("account")),
                            field(context, "closed").equals("1"));
            context.redirect("/accounts", HttpStatus.SEE_OTHER);
        } catch (AccountException e) {
            show(context, e.getMessage(), "", "");
        }
    }

    private static String day(long at) {
        return Instant.ofEpochMilli(at)
                .atZone(ZoneId.systemDefault())
                .toLocalDate()
                .toString();
    }

    /** What is typed has to be her name, so that no slip erases anybody. */
    private void erase(Context context) {
        long id = number(context.pathParam("account"));
        String name = accounts().list().stream()
                .filter(account -> account.id() == id)
                .map(Account::name)
                .findFirst()
                .orElse("");
        if (name.isEmpty()) {
            show(context, "There is no such account; reload the page.", "", "");
            return;
        }
        if (!field(context, "typed").strip().equals(name)) {
            show(context, notTyped(name), "", "");
            return;
        }
        try {
            accounts().erase(id, rooms.seats().account(context).id());
            rooms.seats().forget(id);
            context.redirect("/accounts", HttpStatus.SEE_OTHER);
        } catch (AccountException e) {
            show(context, e.getMessage(), "", "");
        }
    }

    /** What is said when the name was not typed. */
    static String notTyped(String name) {
        return "To erase an account, type its name as it stands here: " + name + ". Nothing was erased.";
    }
}
