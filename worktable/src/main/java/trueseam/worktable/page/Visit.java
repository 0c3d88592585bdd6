package trueseam.worktable.page;

import io.javalin.http.Context;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import trueseam.worktable.project.ChangedElsewhereException;
import trueseam.worktable.project.Kept;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.Workings;

/** One request about one project, from the address to the answer. Used by one thread. */
public final class Visit {

    private final Context context;
    private final Desk desk;
    private final Pages pages;
    private final String id;
    private Kept kept;

    /**
     * For the routes.
     *
     * @param context the server's own view of the request; the address has the project's mark
     * @param desk the desk
     * @param pages how pages are drawn
     */
    Visit(Context context, Desk desk, Pages pages) {
        this.context = context;
        this.desk = desk;
        this.pages = pages;
        this.id = context.pathParam("id");
        this.kept = desk.shelf().kept(id);
    }

    /**
     * The project as it is now.
     *
     * @return what was typed
     */
    public Project project() {
        return kept.project();
    }

    /**
     * What comes of the project as it is now.
     *
     * @return the workings
     */
    public Workings workings() {
        return desk.workings(project());
    }

    /**
     * The desk.
     *
     * @return what all screens share
     */
    public Desk desk() {
        return desk;
    }

    /**
     * The server's own view of the request, for uploads and downloads.
     *
     * @return the context
     */
    public Context context() {
        return context;
    }

    /**
     * What was sent in a field of a form.
     *
     * @param name the field
     * @return its text, empty if it was not sent
     */
    public String field(String name) {
        String value = context.formParam(name);
        return value == null ? "" : value;
    }

    /**
     * What stands in the address after the question mark.
     *
     * @param name the word before the equals sign
     * @return the text, empty if it is not there
     */
    public String asked(String name) {
        String value = context.queryParam(name);
        return value == null ? "" : value;
    }

    /**
     * Changes the project and keeps it, on the version that the page showed.
     *
     * @param label what was done, for undoing, such as "Bust girth 38 in"
     * @param field what was typed into, so that going on typing is one change; empty: a change of its own
     * @param change the change
     * @throws ChangedElsewhereException if another tab changed it meanwhile
     */
    public void change(String label, String field, UnaryOperator<Project> change) {
        keep(now -> now.changed(label, field, change.apply(now.project())));
    }

    /**
     * Goes back or forth among the states.
     *
     * @param move such as {@code Kept::undone}
     * @throws ChangedElsewhereException if another tab changed it meanwhile
     */
    public void keep(UnaryOperator<Kept> move) {
        kept = desk.change(id, version(), field("tab"), move);
    }

    private long version() {
        try {
            return Long.parseLong(field("version"));
        } catch (NumberFormatException e) {
            throw new ChangedElsewhereException(kept.version());
        }
    }

    /**
     * What stands around the screen.
     *
     * @param step which screen
     * @return the frame
     */
    public Frame frame(Step step) {
        return new Frame(
                id,
                project().name(),
                kept.version(),
                Optional.of(step),
                done(),
                kept.undoable(),
                kept.redoable(),
                pages.secret(),
                pages.signed());
    }

    private Set<Step> done() {
        Set<Step> done = EnumSet.noneOf(Step.class);
        Workings workings = workings();
        if (!workings.body().body().readings().isEmpty()) {
            done.add(Step.PERSON);
        }
        if (workings.taken().isThere()) {
            done.add(Step.PATTERN);
        }
        if (workings.fit().isThere()) {
            done.addAll(EnumSet.of(Step.CHART, Step.TABLE, Step.EASE, Step.CLOTH, Step.PRINT));
        }
        if (!project().trial().sittings().isEmpty()) {
            done.add(Step.TRIAL);
        }
        return done;
    }

    /**
     * Answers with a screen.
     *
     * @param step which screen; its template is {@code STEP/page.jte} with the parameters {@code frame} and {@code screen}
     * @param screen what the template shows
     */
    public void show(Step step, Object screen) {
        show(step, step.word() + "/page.jte", screen);
    }

    /**
     * Answers with a part of a screen.
     *
     * @param step which screen
     * @param template its template, with the parameters {@code frame} and {@code screen}
     * @param screen what the template shows
     */
    public void show(Step step, String template, Object screen) {
        context.header("Trueseam-Version", Long.toString(kept.version()));
        context.html(pages.draw(template, Map.of("frame", frame(step), "screen", screen)));
    }

    /**
     * Answers a script.
     *
     * @param json the text
     */
    public void tell(String json) {
        context.header("Trueseam-Version", Long.toString(kept.version()));
        context.contentType("application/json").result(json);
    }

    /**
     * Goes to a screen of this project.
     *
     * @param step which
     */
    public void go(Step step) {
        context.redirect("/p/" + id + "/" + step.word(), io.javalin.http.HttpStatus.SEE_OTHER);
    }
}
