package trueseam.worktable.person;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.compare.Coverage;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyChange;
import trueseam.garment.body.Side;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.MeasuringRound;
import trueseam.intake.body.EntryRules;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.TypedBody;
import trueseam.worktable.work.Workings;

/**
 * What the Person screen shows.
 *
 * @param part what was typed
 * @param groups the measures in the order of measuring
 * @param garment the garment that is chosen, in words; empty if none is
 * @param missing what that garment is fitted by and is not measured yet
 * @param changes what has changed since last time; empty on the first day
 * @param said what came up at bringing a file
 * @param focus the mark of the field that is to be typed into next, or empty
 * @param look the figure and the measure beside it
 */
public record PersonView(
        PersonPart part,
        List<Group> groups,
        String garment,
        List<Field> missing,
        List<Change> changes,
        List<String> said,
        String focus,
        LookView look) {

    /**
     * Measures that are taken one after the other.
     *
     * @param title what they are called together
     * @param rows the measures
     */
    public record Group(String title, List<Row> rows) {}

    /**
     * One line of what has changed.
     *
     * @param measure the measure, with its side
     * @param before what it was
     * @param now what it is
     * @param difference by how much
     * @param beyond whether that is more than measuring error
     */
    public record Change(String measure, String before, String now, String difference, boolean beyond) {}

    /** Does not change. */
    public PersonView {
        groups = List.copyOf(groups);
        missing = List.copyOf(missing);
        changes = List.copyOf(changes);
        said = List.copyOf(said);
    }

    static PersonView of(Workings workings, EntryRules rules, List<String> said, String focus, LookView look) {
        PersonPart part = workings.project().person();
        TypedBody typed = workings.body();
        Body before = TypedBody.of(part.before(), rules).body();
        Optional<Garment> garment = garment(workings.project().pattern());
        Set<Measure> needed = needed(workings, garment);
        Row.Compared compared = new Row.Compared(before, BodyChange.between(before, typed.body()));
        List<Group> groups = Arrays.stream(MeasuringRound.values())
                .map(round -> new Group(
                        round.title(),
                        round.measures().stream()
                                .map(measure -> Row.of(measure, part, typed, compared, needed.contains(measure)))
                                .toList()))
                .toList();
        List<Field> missing = groups.stream()
                .flatMap(group -> group.rows().stream())
                .filter(row -> row.needed() && typed.body().value(row.measure()).isEmpty())
                .map(row -> row.fields().get(0))
                .toList();
        String name = garment.map(g -> g.toString().replace('-', ' '))
                .or(() -> workings.taken().value().map(taken -> taken.pattern().name()))
                .orElse("");
        return new PersonView(part, groups, name, missing, changes(compared, part.format()), said, focus, look);
    }

    private static Optional<Garment> garment(PatternPart part) {
        return Arrays.stream(Garment.values())
                .filter(garment -> garment.name().equals(part.garment()))
                .findFirst();
    }

    /** The garment may be chosen before its size can be. */
    private static Set<Measure> needed(Workings workings, Optional<Garment> garment) {
        return workings.taken()
                .value()
                .map(Taken::kind)
                .or(() -> garment.map(Garment::kind))
                .map(Coverage::measuresOf)
                .orElse(Set.of());
    }

    private static List<Change> changes(Row.Compared compared, LengthFormat show) {
        List<Change> changes = new ArrayList<>();
        for (BodyChange change : compared.changes()) {
            String side = change.side() == Side.BOTH
                    ? ""
                    : ", " + change.side().name().toLowerCase(java.util.Locale.ROOT);
            changes.add(new Change(
                    MeasureWords.label(change.measure()) + side,
                    show.show(change.beforeMm()),
                    show.show(change.nowMm()),
                    Row.difference(change, show),
                    change.isBeyondMeasuringError()));
        }
        return changes;
    }

    /**
     * What is drawn anew after each reading, while the fields themselves stay.
     *
     * @return the marks of these parts, as htmx takes them
     */
    public String fresh() {
        StringBuilder marks = new StringBuilder("#bar,#still,#since");
        groups.forEach(group -> group.rows().forEach(row -> marks.append(",#says-")
                .append(row.measure().name())
                .append(",#comes-")
                .append(row.measure().name())));
        return marks.toString();
    }

    /**
     * Earlier days.
     *
     * @return their dates, the latest first, as they were typed
     */
    public List<String> earlier() {
        List<String> dates = new ArrayList<>();
        part.before().days().forEach(day -> dates.add(0, day.date().isEmpty() ? "a day without a date" : day.date()));
        return dates;
    }
}
