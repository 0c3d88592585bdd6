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
import trueseam.worktable.people.Again;
import trueseam.worktable.people.PeopleScreen;
import trueseam.worktable.project.NoSuchProjectException;
import trueseam.worktable.project.Project;

/** The first page is the record book: the projects and a new one, the people, and taking all of it away. */
public final class StartScreen {

    private final Desk desk;
    private final Pages pages;

    /**
     * For the server.
     *
     * @param desk the desk
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
     */
    public void answer(RoutesConfig routes) {
        routes.get("/", context -> show(context, ""));
        routes.get("/favicon.ico", context -> context.redirect("/static/mark.svg"));
        routes.post("/projects", this::begin);
        routes.post("/projects/{id}/duplicate", this::duplicate);
        routes.post("/projects/{id}/archive", this::archive);
        routes.post("/projects/{id}/delete", this::delete);
        routes.post("/measure-again", context -> {
            Again.tell(context);
            context.redirect("/", HttpStatus.SEE_OTHER);
        });
        new PeopleScreen(desk, pages).answer(routes);
        new TakeAway(desk, this).answer(routes);
    }

    /** The page, with what was done. */
    void show(Context context, String said) {
        StartPage page = StartPage.of(
                desk.shelf().drawer(),
                sought(context),
                Again.rule(context),
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

    private void delete(Context context) {
        desk.shelf().delete(context.pathParam("id"));
        context.redirect("/", HttpStatus.SEE_OTHER);
    }
}
