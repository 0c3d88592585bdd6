package trueseam.worktable.start;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.worktable.page.Desk;
import trueseam.worktable.page.Frame;
import trueseam.worktable.page.Pages;
import trueseam.worktable.project.Project;

/** The first page: the projects, and a new one. */
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
     * One line of the list.
     *
     * @param id the project's mark
     * @param name its name
     * @param person who it is for
     * @param garment what it makes
     * @param changed the day of the last change
     */
    public record Line(String id, String name, String person, String garment, LocalDate changed) {}

    /**
     * Names the addresses.
     *
     * @param routes the server's routes
     */
    public void answer(RoutesConfig routes) {
        routes.get("/", context -> show(context, ""));
        routes.get("/favicon.ico", context -> context.redirect("/static/mark.svg"));
        routes.post("/projects", this::begin);
        routes.post("/projects/{id}/delete", this::delete);
        new TakeAway(desk, this).answer(routes);
    }

    /** The page, with what was done. */
    void show(Context context, String said) {
        List<Line> lines = desk.shelf().list().stream()
                .map(listed -> new Line(
                        listed.id(),
                        listed.head().name(),
                        listed.personLabel(),
                        listed.garment(),
                        Instant.ofEpochMilli(listed.changedAt())
                                .atZone(ZoneId.systemDefault())
                                .toLocalDate()))
                .toList();
        Frame frame =
                new Frame("", "", 0, Optional.empty(), Set.of(), Optional.empty(), Optional.empty(), pages.secret());
        context.html(pages.draw("start/page.jte", Map.of("frame", frame, "lines", lines, "said", said)));
    }

    private void begin(Context context) {
        String name = Optional.ofNullable(context.formParam("name")).orElse("").strip();
        String id = desk.shelf().begin(Project.named(name.isEmpty() ? "Untitled" : name));
        context.redirect("/p/" + id + "/person", HttpStatus.SEE_OTHER);
    }

    private void delete(Context context) {
        desk.shelf().delete(context.pathParam("id"));
        context.redirect("/", HttpStatus.SEE_OTHER);
    }
}
