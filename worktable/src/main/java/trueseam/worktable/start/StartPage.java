package trueseam.worktable.start;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import trueseam.garment.body.MeasureAgain;
import trueseam.records.Drawer;
import trueseam.records.person.MeasuringDay;
import trueseam.records.project.KeptProject;
import trueseam.records.project.Sought;
import trueseam.worktable.people.Again;

/**
 * The record book on one page.
 *
 * @param sought what of it is shown
 * @param lines the projects
 * @param people the people
 * @param patterns the patterns to choose from
 * @param rule when to measure again
 * @param said what was done just now, or empty
 */
public record StartPage(
        Sought sought,
        List<Line> lines,
        List<PersonLine> people,
        List<Choice> patterns,
        MeasureAgain rule,
        String said) {

    /**
     * A project.
     *
     * @param id its mark
     * @param name its name
     * @param person who it is for
     * @param garment what it makes
     * @param changed the day of the last change
     * @param archived whether it is put away
     */
    public record Line(String id, String name, String person, String garment, LocalDate changed, boolean archived) {}

    /**
     * A person.
     *
     * @param id her mark
     * @param label what she is called here
     * @param days how many days she was measured on
     * @param again that it is time to measure her again, or empty
     * @param archived whether she is put away
     */
    public record PersonLine(String id, String label, int days, String again, boolean archived) {}

    /**
     * Something to choose.
     *
     * @param id its mark
     * @param label what it is called
     */
    public record Choice(String id, String label) {}

    /** Does not change. */
    public StartPage {
        lines = List.copyOf(lines);
        people = List.copyOf(people);
        patterns = List.copyOf(patterns);
    }

    /**
     * Whether nothing narrows the list.
     *
     * @return true if all projects are asked for
     */
    public boolean isWhole() {
        return sought.equals(Sought.all());
    }

    static StartPage of(Drawer drawer, Sought sought, MeasureAgain rule, LocalDate today, String said) {
        return new StartPage(
                sought,
                drawer.projects().list(sought).stream().map(StartPage::line).toList(),
                drawer.people().list("", sought.archivedToo()).stream()
                        .map(person -> {
                            List<MeasuringDay> days = drawer.days().of(person.id());
                            return new PersonLine(
                                    person.id(),
                                    person.label().isBlank() ? "no label" : person.label(),
                                    days.size(),
                                    person.archived() ? "" : Again.note(days, rule, today),
                                    person.archived());
                        })
                        .toList(),
                drawer.patterns().list("", true).stream()
                        .map(pattern -> new Choice(pattern.id(), pattern.name()))
                        .toList(),
                rule,
                said);
    }

    private static Line line(KeptProject project) {
        return new Line(
                project.id(),
                project.head().name(),
                project.personLabel(),
                project.garment(),
                Instant.ofEpochMilli(project.changedAt())
                        .atZone(ZoneId.systemDefault())
                        .toLocalDate(),
                project.archived());
    }

    /**
     * Whether a choice is the one that the list is narrowed to.
     *
     * @param chosen the narrowing
     * @param id the choice's mark
     * @return true if it is
     */
    public static boolean is(Optional<String> chosen, String id) {
        return chosen.equals(Optional.of(id));
    }
}
