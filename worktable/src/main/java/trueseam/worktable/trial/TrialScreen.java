package trueseam.worktable.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import trueseam.fitting.trial.Pinned;
import trueseam.fitting.trial.PinnedException;
import trueseam.fitting.trial.PinnedLine;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.TrialPart;
import trueseam.worktable.work.Problem;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.TypedTrial;

/** Reading the folds, and writing down what was pinned. */
public final class TrialScreen implements Screen {

    /** For the server. */
    public TrialScreen() {}

    @Override
    public void answer(Routes routes) {
        routes.look("trial", visit -> show(visit, asked(visit.context().queryParamMap()), Optional.empty()));
        routes.look("trial/sitting.csv", TrialScreen::file);
        routes.act("trial/add", TrialScreen::add);
        routes.act("trial/amount", TrialScreen::amount);
        routes.act("trial/drop", TrialScreen::drop);
        routes.act("trial/date", TrialScreen::date);
        routes.act("trial/sitting", visit -> change(visit, "Another sitting", "", TrialPart::withSitting));
    }

    private static Map<String, String> asked(Map<String, List<String>> parameters) {
        Map<String, String> asked = new LinkedHashMap<>();
        parameters.forEach((key, values) -> {
            if (!values.isEmpty()) {
                asked.put(key, values.get(0));
            }
        });
        return asked;
    }

    private static void show(Visit visit, Map<String, String> asked, Optional<Problem> problem) {
        visit.show(Step.TRIAL, TrialView.of(visit.workings(), asked, problem));
    }

    private static void change(Visit visit, String label, String field, UnaryOperator<TrialPart> how) {
        visit.change(label, field, project -> project.with(how.apply(project.trial())));
        show(visit, Map.of(), Optional.empty());
    }

    /** Only what can be read is added; what cannot is said beside its field, and the form keeps what was typed. */
    private static void add(Visit visit) {
        TrialPart.Seen typed = new TrialPart.Seen(
                visit.field("symptom"),
                visit.field("cause"),
                visit.field("alteration"),
                visit.field("amount"),
                visit.field("as"),
                visit.field("side"),
                visit.field("note"));
        Optional<Pattern> pattern = visit.workings().taken().value().map(Taken::pattern);
        if (pattern.isEmpty()) {
            show(visit, asked(visit.context().formParamMap()), Optional.empty());
            return;
        }
        LengthFormat show = visit.project().person().format();
        try {
            Pinned pinned = TypedTrial.line(typed)
                    .read(pattern.get(), visit.project().person().bareUnit());
            PinnedLine line = PinnedLine.of(pinned, show);
            TrialPart.Seen seen = new TrialPart.Seen(
                    line.seen(), line.cause(), line.alteration(), line.pinned(), line.as(), line.side(), line.note());
            change(visit, "Pinned: " + pinned.remedy().words() + " " + line.pinned(), "", part -> part.withSeen(seen));
        } catch (PinnedException e) {
            show(
                    visit,
                    asked(visit.context().formParamMap()),
                    Optional.of(new Problem(PinForm.field(e.field()), e.getMessage())));
        }
    }

    private static void amount(Visit visit) {
        String amount = visit.field("amount").strip();
        int sitting = number(visit, "sitting");
        int at = number(visit, "at");
        change(
                visit,
                "Pinned: " + amount,
                "pinned/" + sitting + "/" + at,
                part -> part.withSeen(
                        sitting,
                        at,
                        seen -> Optional.of(new TrialPart.Seen(
                                seen.symptom(),
                                seen.cause(),
                                seen.alteration(),
                                amount,
                                seen.as(),
                                seen.side(),
                                seen.note()))));
    }

    private static void drop(Visit visit) {
        change(
                visit,
                "Taken off: " + visit.field("what"),
                "",
                part -> part.withSeen(number(visit, "sitting"), number(visit, "at"), seen -> Optional.empty()));
    }

    private static void date(Visit visit) {
        String date = visit.field("date");
        int sitting = number(visit, "sitting");
        change(visit, "Sitting of " + date, "date/" + sitting, part -> part.withDate(sitting, date));
    }

    /** A sitting as the command line takes it. */
    private static void file(Visit visit) {
        int at = number(visit.asked("sitting"));
        List<TrialPart.Sitting> sittings = visit.project().trial().sittings();
        TrialPart.Sitting sitting = at < sittings.size() ? sittings.get(at) : new TrialPart.Sitting("", List.of());
        visit.context()
                .contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"sitting-" + (at + 1) + ".csv\"")
                .result(SittingFile.text(at, sitting));
    }

    private static int number(Visit visit, String field) {
        return number(visit.field(field));
    }

    private static int number(String text) {
        return text.matches("\\d{1,3}") ? Integer.parseInt(text) : Integer.MAX_VALUE;
    }
}
