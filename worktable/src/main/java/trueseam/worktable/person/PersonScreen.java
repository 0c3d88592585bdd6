package trueseam.worktable.person;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import trueseam.garment.finding.Finding;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.SheetException;
import trueseam.intake.survey.BroughtBody;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.page.Brought;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.PersonPart.Day;
import trueseam.worktable.project.PersonPart.Typed;

/** Type what the tape reads, day by day; bring it from a file; hold it against last time. */
public final class PersonScreen implements Screen {

    private static final int LONGEST_TEXT = 60;

    private final Clock clock;

    /**
     * For the server.
     *
     * @param clock what day it is
     */
    public PersonScreen(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void answer(Routes routes) {
        routes.look("person", PersonScreen::open);
        routes.look("person/look", PersonScreen::look);
        routes.act("person/who", PersonScreen::who);
        routes.act("person/day", PersonScreen::day);
        routes.act("person/read", this::read);
        routes.act("person/again", visit -> readings(visit, "Another reading of ", this::again));
        routes.act("person/drop", visit -> readings(visit, "Reading dropped: ", PersonScreen::drop));
        routes.act("person/apart", visit -> readings(visit, "Left and right apart: ", PersonScreen::apart));
        routes.act("person/together", visit -> readings(visit, "One for both sides: ", PersonScreen::together));
        routes.act("person/next", this::next);
        routes.act("person/bring", this::bring);
    }

    /** Another screen may lead to one measure: {@code person?measure=HIP_GIRTH}. */
    private static void open(Visit visit) {
        String measure = visit.asked("measure");
        LookView look = lookAt(visit, measure, "");
        String focus = look.measure().map(m -> Field.id(m, "", 0)).orElse("");
        visit.show(Step.PERSON, PersonView.of(visit.workings(), visit.desk().rules(), List.of(), focus, look));
    }

    private static void show(Visit visit, List<String> said, String focus) {
        show(visit, said, focus, lookAt(visit, visit.field("measure"), visit.field("side")));
    }

    private static void show(Visit visit, List<String> said, String focus, LookView look) {
        visit.show(Step.PERSON, PersonView.of(visit.workings(), visit.desk().rules(), said, focus, look));
    }

    private static LookView lookAt(Visit visit, String measure, String side) {
        return LookView.of(visit.workings(), visit.desk().rules(), measure, side);
    }

    private static void look(Visit visit) {
        visit.show(Step.PERSON, "person/look.jte", lookAt(visit, visit.asked("measure"), visit.asked("side")));
    }

    private static void change(Visit visit, String label, String field, UnaryOperator<PersonPart> how) {
        visit.change(label, field, project -> project.with(how.apply(project.person())));
    }

    private static void who(Visit visit) {
        String label = visit.field("label").strip();
        String units = visit.field("units");
        String people = visit.field("people");
        change(visit, "Person " + label, "person/who", part -> new PersonPart(label, units, people, part.days()));
        show(visit, List.of(), "");
    }

    private static void day(Visit visit) {
        String date = visit.field("date");
        String note = visit.field("note");
        change(visit, "Day of measuring", "person/day", part -> part.withToday(new Day(date, part.readings(), note)));
        show(visit, List.of(), "");
    }

    private void read(Visit visit) {
        Optional<Measure> measure = measure(visit);
        String text = visit.field("text").strip();
        String side = visit.field("side");
        int at = at(visit);
        if (measure.isEmpty() || text.length() > LONGEST_TEXT) {
            show(visit, List.of("That is too long for a length; nothing was changed."), "");
            return;
        }
        String label = MeasureWords.label(measure.get()) + (side.isEmpty() ? "" : " " + side) + " " + text;
        change(visit, label, Field.id(measure.get(), side, at), part -> {
            Typed typed =
                    new Typed(measure.get().term(), side, text, part.bareUnit().sign());
            return dated(part.withReadings(Readings.typed(part.readings(), typed, at)));
        });
        // The page takes the fields' notes out of the answer and asks for the figure by itself, of the field where she
        // is by then.
        show(visit, List.of(), "", LookView.notDrawn());
    }

    /** The first day of measuring is today, unless she says otherwise. */
    private PersonPart dated(PersonPart part) {
        Day day = part.today();
        return day.date().isEmpty() && part.days().size() == 1
                ? part.withToday(new Day(today(), day.readings(), day.note()))
                : part;
    }

    private String today() {
        return LocalDate.now(clock).toString();
    }

    /** What is done to the readings of one measure. */
    private interface Edit {
        List<Typed> on(PersonPart part, Measure measure, Visit visit);
    }

    private static void readings(Visit visit, String label, Edit edit) {
        Optional<Measure> measure = measure(visit);
        if (measure.isEmpty()) {
            show(visit, List.of("There is no such measure; nothing was changed."), "");
            return;
        }
        change(
                visit,
                label + measure.get().workroomLabel(),
                "",
                part -> part.withReadings(edit.on(part, measure.get(), visit)));
        show(visit, List.of(), visit.field("then"));
    }

    private List<Typed> again(PersonPart part, Measure measure, Visit visit) {
        return Readings.again(
                part.readings(),
                measure.term(),
                visit.field("side"),
                part.bareUnit().sign());
    }

    private static List<Typed> drop(PersonPart part, Measure measure, Visit visit) {
        return Readings.without(part.readings(), measure.term(), visit.field("side"), at(visit));
    }

    private static List<Typed> apart(PersonPart part, Measure measure, Visit visit) {
        return measure.sidesMayDiffer()
                ? Readings.apart(
                        part.readings(), measure.term(), part.bareUnit().sign())
                : part.readings();
    }

    private static List<Typed> together(PersonPart part, Measure measure, Visit visit) {
        return Readings.together(part.readings(), measure.term());
    }

    private void next(Visit visit) {
        String today = today();
        change(visit, "Measure again on " + today, "", part -> part.withNextDay(new Day(today, List.of(), "")));
        show(visit, List.of(), "");
    }

    private void bring(Visit visit) {
        UploadedFile file = visit.context().uploadedFile("file");
        if (file == null || file.size() == 0) {
            show(visit, List.of("Choose a file first, then bring it."), "");
            return;
        }
        List<String> said = new ArrayList<>();
        String name = Brought.name(file);
        try {
            BroughtBody brought = BroughtBody.read(
                    name,
                    Brought.text(file),
                    visit.field("row"),
                    visit.desk().rules().withBareUnit(visit.project().person().bareUnit()));
            for (Finding finding : brought.file().findings()) {
                said.add(finding.place() + ": " + finding.sentence());
            }
            if (brought.file().body().readings().isEmpty()) {
                said.add(name + " has no measure that can be used; what was here before stays.");
            } else {
                change(visit, "Measures from " + name, "", part -> Bringing.person(part, brought, today()));
            }
        } catch (SheetException e) {
            said.add(e.getMessage());
        } catch (IOException e) {
            said.add(name + " cannot be read: it is not text in UTF-8. Bring a file as docs/body-files.md says.");
        }
        show(visit, said, "");
    }

    private static Optional<Measure> measure(Visit visit) {
        String name = visit.field("measure");
        return Arrays.stream(Measure.values())
                .filter(measure -> measure.name().equals(name))
                .findFirst();
    }

    private static int at(Visit visit) {
        String at = visit.field("at");
        return at.matches("\\d{1,2}") ? Integer.parseInt(at) : 0;
    }
}
