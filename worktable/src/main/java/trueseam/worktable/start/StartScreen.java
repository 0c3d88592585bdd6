package trueseam.worktable.start;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import trueseam.records.project.KeptProject;
import trueseam.records.project.Sought;
import trueseam.worktable.page.Desk;
import trueseam.worktable.page.Pages;
import trueseam.worktable.page.Seats;
import trueseam.worktable.people.Again;
import trueseam.worktable.people.PeopleScreen;
import trueseam.worktable.project.NoSuchProjectException;
import trueseam.worktable.project.Project;

/** The first page is the record book: the projects and a new one, the people, and taking all of it away. */
public final class StartScreen {

    private final Desk desk;
    private final Pages pages;

    /**
     * For one request.
     *
     * @param desk the desk that it is answered at
     * @param pages how pages are drawn
     */
    public StartScreen(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /**
     * Names the addresses.
     *
     * @param routes the server's routes
     * @param seats whose desk a request is answered at
     */
    public static void answer(RoutesConfig routes, Seats seats) {
        routes.get("/", context -> at(seats, context).show(context, ""));
        routes.get("/favicon.ico", context -> context.redirect("/static/mark.svg"));
        routes.post("/projects", context -> at(seats, context).begin(context));
        routes.post("/projects/{id}/duplicate", context -> at(seats, context).duplicate(context));
        routes.post("/projects/{id}/archive", context -> at(seats, context).archive(context));
        routes.post("/projects/{id}/delete", context -> at(seats, context).delete(context));
        routes.post("/measure-again", context -> at(seats, context).measureAgain(context));
        PeopleScreen.answer(routes, seats);
        routes.get("/take-away", context -> away(seats, context).give(context));
        routes.post("/bring-back", context -> away(seats, context).bringBack(context));
    }

    private static StartScreen at(Seats seats, Context context) {
        Seats.Seat seat = seats.of(context);
        return new StartScreen(seat.desk(), seat.pages());
    }

    private static TakeAway away(Seats seats, Context context) {
        StartScreen start = at(seats, context);
        return new TakeAway(start.desk, start);
    }

    /** The page, with what was done. */
    void show(Context context, String said) {
        StartPage page = StartPage.of(
                desk.shelf().drawer(),
                sought(context),
                Again.rule(desk.shelf().drawer()),
                LocalDate.now(ZoneId.systemDefault()),
                said);
        context.html(pages.draw("start/page.jte", Map.of("frame", pages.frame(), "page", page)));
    }

    private static Sought sought(Context context) {
        return new Sought(
                asked(context, "text").orElse(""),
                asked(context, "person"),
                asked(context, "pattern"),
                asked(context, "archived").isPresent());
    }

    private static Optional<String> asked(Context context, String name) {
        return Optional.ofNullable(context.queryParam(name)).map(String::strip).filter(text -> !text.isEmpty());
    }

    private void begin(Context context) {
        String name = Optional.ofNullable(context.formParam("name")).orElse("").strip();
        Project project = Project.named(name.isEmpty() ? "Untitled" : name);
        Optional<String> person =
                Optional.ofNullable(context.formParam("person")).filter(mark -> !mark.isEmpty());
        Project hers = person.flatMap(desk.shelf()::person).map(project::with).orElse(project);
        to(context, desk.shelf().begin(hers, person));
    }

    /** What belongs to the person and to her way of working is kept; what was decided on the old pattern is not. */
    private void duplicate(Context context) {
        KeptProject old =
                desk.shelf().drawer().projects().find(context.pathParam("id")).orElseThrow(NoSuchProjectException::new);
        Project was = desk.shelf().kept(old.id()).project();
        to(context, desk.shelf().begin(was.forAnotherPattern(), old.head().person()));
    }

    private static void to(Context context, String project) {
        context.redirect("/p/" + project + "/person", HttpStatus.SEE_OTHER);
    }

    private void archive(Context context) {
        boolean away = "yes".equals(context.formParam("away"));
        desk.shelf().drawer().projects().archive(context.pathParam("id"), away);
        context.redirect(away ? "/" : "/?archived=yes", HttpStatus.SEE_OTHER);
    }

    private void measureAgain(Context context) {
        boolean taken = Again.tell(desk.shelf().drawer(), context.formParam("months"), context.formParam("growing"));
        if (taken) {
            context.redirect("/", HttpStatus.SEE_OTHER);
        } else {
            context.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(context, "The months are whole numbers from 1 to 60; nothing was changed.");
        }
    }

    private void delete(Context context) {
        desk.shelf().delete(context.pathParam("id"));
        context.redirect("/", HttpStatus.SEE_OTHER);
    }
}
