package trueseam.worktable.start;

import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.Kept;

/** Undo, redo and the project's name, the same on every screen. */
public final class History implements Screen {

    /** For the server. */
    public History() {}

    @Override
    public void answer(Routes routes) {
        routes.act("undo", visit -> {
            visit.keep(Kept::undone);
            back(visit);
        });
        routes.act("redo", visit -> {
            visit.keep(Kept::redone);
            back(visit);
        });
        routes.act("name", visit -> {
            String name = visit.field("name").strip();
            visit.change("Name " + name, "name", project -> project.withName(name.isEmpty() ? project.name() : name));
            back(visit);
        });
        routes.look("", visit -> visit.go(Step.PERSON));
    }

    /** To the screen that the change was made on. */
    private static void back(Visit visit) {
        for (Step step : Step.values()) {
            if (step.word().equals(visit.field("screen"))) {
                visit.go(step);
                return;
            }
        }
        visit.go(Step.PERSON);
    }
}
