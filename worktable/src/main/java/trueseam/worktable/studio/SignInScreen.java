package trueseam.worktable.studio;

import static trueseam.worktable.studio.StudioScreens.field;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Accounts;

/** Signing in and out, and taking an invitation. */
final class SignInScreen {

    private final StudioScreens.Rooms rooms;

    SignInScreen(StudioScreens.Rooms rooms) {
        this.rooms = rooms;
    }

    void answer(RoutesConfig routes) {
        routes.get("/sign-in", context -> rooms.show(context, "sign-in", "", Map.of("name", "")));
        routes.post("/sign-in", this::signIn);
        routes.post("/sign-out", context -> {
            rooms.gate().end(context);
            context.redirect("/sign-in", HttpStatus.SEE_OTHER);
        });
        routes.post("/sign-out-everywhere", this::signOutEverywhere);
        routes.get("/invited/{token}", context -> invited(context, ""));
        routes.post("/invited/{token}", this::enter);
    }

    private void signIn(Context context) {
        String name = field(context, "name");
        try {
            rooms.gate().begin(context, name, field(context, "password"));
            context.redirect("/", HttpStatus.SEE_OTHER);
        } catch (AccountException e) {
            rooms.show(context, "sign-in", e.getMessage(), Map.of("name", name));
            context.status(e.isWaiting() ? HttpStatus.TOO_MANY_REQUESTS : HttpStatus.UNPROCESSABLE_CONTENT);
        }
    }

    private void signOutEverywhere(Context context) {
        Account account = rooms.seats().account(context);
        rooms.book().get().studio().sessions().endAll(account.id());
        rooms.gate().end(context);
        context.redirect("/sign-in", HttpStatus.SEE_OTHER);
    }

    private Accounts accounts() {
        return rooms.book().get().studio().accounts();
    }

    private void invited(Context context, String said) {
        String name = accounts()
                .invited(context.pathParam("token"))
                .orElseThrow(() -> AccountException.refused(
                        "This link was used already or is too old; ask the studio's owner for a new one."))
                .name();
        rooms.show(
                context,
                "invited",
                said,
                Map.of(
                        "name",
                        said.isEmpty() ? name : field(context, "called"),
                        "signIn",
                        field(context, "name"),
                        "token",
                        context.pathParam("token")));
    }

    private void enter(Context context) {
        String password = field(context, "password");
        try {
            if (!password.equals(field(context, "again"))) {
                throw AccountException.refused("The two passwords are not the same; type both again.");
            }
            accounts().enter(context.pathParam("token"), field(context, "called"), field(context, "name"), password);
            rooms.gate().begin(context, field(context, "name"), password);
            context.redirect("/", HttpStatus.SEE_OTHER);
        } catch (AccountException e) {
            invited(context, e.getMessage());
        }
    }
}
