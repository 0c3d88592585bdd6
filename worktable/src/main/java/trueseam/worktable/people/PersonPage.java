package trueseam.worktable.people;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import trueseam.garment.body.MeasureAgain;
import trueseam.garment.length.LengthFormat;
import trueseam.records.Drawer;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.Person;
import trueseam.records.project.KeptPrint;
import trueseam.records.project.KeptProject;
import trueseam.records.project.Sought;
import trueseam.worktable.project.PersonPart;

/**
 * A person of the record book.
 *
 * @param id her mark
 * @param version the version that the page shows
 * @param label what she is called here
 * @param note what was noted of her
 * @param photo whether there is a photo
 * @param archived whether she is put away
 * @param again that it is time to measure her again, or empty
 * @param days her days
 * @param trends her measures over the days
 * @param garments her projects
 */
public record PersonPage(
        String id,
        long version,
        String label,
        String note,
        boolean photo,
        boolean archived,
        String again,
        List<Day> days,
        List<TrendPicture> trends,
        List<Garment> garments) {

    /**
     * A day on which she was measured.
     *
     * @param date when
     * @param note what was noted
     * @param count how many readings were taken
     */
    public record Day(String date, String note, int count) {}

    /**
     * One of her projects.
     *
     * @param id its mark
     * @param name its name
     * @param what what it makes
     * @param printed what was printed of it and when, or empty
     */
    public record Garment(String id, String name, String what, String printed) {}

    /** Does not change. */
    public PersonPage {
        days = List.copyOf(days);
        trends = List.copyOf(trends);
        garments = List.copyOf(garments);
    }

    static PersonPage of(Drawer drawer, Person person, MeasureAgain rule, LocalDate today) {
        List<MeasuringDay> days = drawer.days().of(person.id());
        LengthFormat show = new PersonPart(person.label(), person.units(), person.population(), List.of()).format();
        return new PersonPage(
                person.id(),
                person.version(),
                person.label(),
                person.note(),
                person.photo().isPresent(),
                person.archived(),
                Again.note(days, rule, today),
                days.stream()
                        .map(day -> new Day(
                                day.date().isEmpty() ? "no date" : day.date(),
                                day.note(),
                                day.readings().size()))
                        .toList(),
                Trends.of(days).stream()
                        .map(trend -> TrendPicture.of(trend, show))
                        .toList(),
                drawer.projects().list(Sought.of(person.id())).stream()
                        .map(project -> garment(drawer, project))
                        .toList());
    }

    private static Garment garment(Drawer drawer, KeptProject project) {
        List<KeptPrint> prints = drawer.fits().prints(project.id());
        String printed = prints.isEmpty()
                ? ""
                : prints.size() + " taken away, last on "
                        + Instant.ofEpochMilli(prints.get(0).madeAt())
                                .atZone(ZoneId.systemDefault())
                                .toLocalDate();
        return new Garment(project.id(), project.head().name(), project.garment(), printed);
    }
}
