package trueseam.worktable.studio;

import static trueseam.worktable.studio.StudioScreens.field;
import static trueseam.worktable.studio.StudioScreens.number;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import trueseam.records.Drawer;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Role;

/** A teacher's classes, who is in them, and what their students share. */
final class ClassesScreen {

    private static final String NOT_HERS = "That is none of your classes, or she is in it already; reload the page.";

    private final StudioScreens.Rooms rooms;

    ClassesScreen(StudioScreens.Rooms rooms) {
        this.rooms = rooms;
    }

    void answer(RoutesConfig routes) {
        routes.get("/classes", context -> show(context, ""));
        routes.post("/classes", this::begin);
        routes.post(
                "/classes/{class}/add",
                context -> done(context, hers(context).classes().add(mark(context), student(context))));
        routes.post(
                "/classes/{class}/remove",
                context -> done(context, hers(context).classes().remove(mark(context), student(context))));
        routes.post(
                "/classes/{class}/end",
                context -> done(context, hers(context).classes().end(mark(context))));
    }

    private Drawer hers(Context context) {
        return rooms.seats().drawer(rooms.seats().account(context));
    }

    private static String mark(Context context) {
        return context.pathParam("class");
    }

    private static long student(Context context) {
        return number(field(context, "student"));
    }

    private void show(Context context, String said) {
        Drawer hers = hers(context);
        rooms.show(
                context,
                "classes",
                said,
                Map.of(
                        "classes",
                        hers.classes().list(),
                        "students",
                        rooms.book().get().studio().accounts().list().stream()
                                .filter(ClassesScreen::mayBeTaken)
                                .toList(),
                        "shared",
                        hers.sharing().list()));
    }

    private static boolean mayBeTaken(Account account) {
        return account.role() == Role.STUDENT && !account.closed();
    }

    private void begin(Context context) {
        try {
            hers(context).classes().begin(field(context, "called"));
            context.redirect("/classes", HttpStatus.SEE_OTHER);
        } catch (AccountException e) {
            show(context, e.getMessage());
        }
    }

    private void done(Context context, boolean was) {
        if (was) {
            context.redirect("/classes", HttpStatus.SEE_OTHER);
        } else {
            show(context, NOT_HERS);
        }
    }
}
