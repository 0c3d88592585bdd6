package trueseam.worktable.standing;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import trueseam.intake.report.FitReportFile;
import trueseam.intake.sheet.SheetException;
import trueseam.worktable.page.Brought;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.StandingPart;

/** Bring the reports of earlier fits, see what they agree on, take it into this fit or only look. */
public final class StandingScreen implements Screen {

    /** For the server. */
    public StandingScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("standing", visit -> show(visit, List.of()));
        routes.act("standing/bring", StandingScreen::bring);
        routes.act("standing/drop", StandingScreen::drop);
        routes.act("standing/take", StandingScreen::take);
    }

    private static void show(Visit visit, List<String> problems) {
        visit.show(Step.CHART, "standing/page.jte", StandingView.of(visit.workings(), problems));
    }

    private static void bring(Visit visit) {
        List<String> problems = new ArrayList<>();
        StandingPart part = visit.project().standing();
        for (UploadedFile file : visit.context().uploadedFiles("file")) {
            String name = Brought.name(file);
            if (file.size() == 0) {
                continue;
            }
            try {
                String text = Brought.text(file);
                FitReportFile.read(name, text); // only what can be read is brought
                part = part.with(new StandingPart.Report(visit.desk().shelf().keepFile(text), name));
            } catch (SheetException e) {
                problems.add(e.getMessage());
            } catch (IOException e) {
                problems.add(name + ": The file cannot be read: it is not text in UTF-8.");
            }
        }
        int more = part.reports().size() - visit.project().standing().reports().size();
        if (more > 0) {
            StandingPart brought = part;
            visit.change(
                    more == 1 ? "Report of an earlier fit" : more + " reports of earlier fits",
                    "",
                    project -> project.with(brought));
        } else if (problems.isEmpty()) {
            problems.add("Choose the report.json of an earlier fit first, one that is not in the list yet.");
        }
        show(visit, problems);
    }

    private static void drop(Visit visit) {
        String file = visit.field("file");
        visit.change(
                "Take an earlier report off",
                "",
                project -> project.with(project.standing().without(file)));
        show(visit, List.of());
    }

    private static void take(Visit visit) {
        boolean off = visit.field("take").isEmpty();
        visit.change(
                off ? "Only look at earlier patterns" : "Take up earlier patterns",
                "",
                project -> project.with(new StandingPart(project.standing().reports(), off)));
        show(visit, List.of());
    }
}
