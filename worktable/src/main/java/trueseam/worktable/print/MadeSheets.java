package trueseam.worktable.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import trueseam.records.archive.Made;
import trueseam.worktable.page.Desk;
import trueseam.worktable.project.NoSuchProjectException;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.Outcome;

/** What is worked out of projects for reading them without this program: step sheet, chart, report and altered pattern. */
public final class MadeSheets {

    private static final List<Leaf> SHEETS = List.of(Leaf.STEPS, Leaf.CHART, Leaf.CHART_CSV, Leaf.ALTERED, Leaf.REPORT);

    private final Desk desk;
    private final LocalDate today;

    /**
     * The sheets of projects.
     *
     * @param desk the desk
     * @param today the day on which they are made
     */
    public MadeSheets(Desk desk, LocalDate today) {
        this.desk = desk;
        this.today = today;
    }

    /**
     * The sheets of one project.
     *
     * @param id its mark
     * @return those there are: none before there is a fit, or if the project was deleted meanwhile
     */
    public List<Made> of(String id) {
        Project project;
        try {
            project = desk.shelf().kept(id).project();
        } catch (NoSuchProjectException e) {
            return List.of();
        }
        Printing printing = new Printing(desk.workings(project));
        if (!printing.fit().isThere()) {
            return List.of();
        }
        List<Made> made = new ArrayList<>();
        for (Leaf leaf : SHEETS) {
            Outcome<byte[]> file = printing.file(leaf, today);
            if (file.isThere()) {
                made.add(new Made(leaf.word(), file.get()));
            }
        }
        return made;
    }
}
