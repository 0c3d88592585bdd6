package trueseam.worktable.project;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.records.pattern.KeptPattern;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.TapeReading;
import trueseam.records.sitting.KeptSitting;

/** What of a project becomes rows of their own in the record book, so that it is found again and goes on to the next project. */
final class Derived {

    /** A pattern that nobody brought; it is only worth a row while a project uses it. */
    private static final List<String> MADE_HERE = List.of("draft/", "paper/");

    private Derived() {}

    static List<MeasuringDay> days(PersonPart person) {
        return person.days().stream()
                .map(day -> new MeasuringDay(
                        day.date(),
                        day.note(),
                        day.readings().stream()
                                .filter(typed -> !typed.text().isBlank())
                                .map(Derived::reading)
                                .toList()))
                .toList();
    }

    private static TapeReading reading(PersonPart.Typed typed) {
        return new TapeReading(
                typed.measure(),
                typed.side(),
                typed.text(),
                typed.unit(),
                typed.origin(),
                typed.note(),
                mm(typed.text(), typed.bareUnit()));
    }

    /** The other way round, for the next project of the same person. */
    static List<PersonPart.Day> typed(List<MeasuringDay> days) {
        return days.stream()
                .map(day -> new PersonPart.Day(
                        day.date(),
                        day.readings().stream()
                                .map(r -> new PersonPart.Typed(
                                        r.measure(), r.side(), r.typed(), r.unit(), r.origin(), r.note()))
                                .toList(),
                        day.note()))
                .toList();
    }

    static Optional<KeptPattern> pattern(String id, Project project) {
        PatternPart part = project.pattern();
        if (!part.file().isEmpty()) {
            return Optional.of(KeptPattern.of(
                    "file/" + part.file(),
                    part.fileName(),
                    part.garment(),
                    part.table(),
                    List.of(new KeptPattern.InFile(part.file(), part.fileName()))));
        }
        String garment = part.garment().replace('_', ' ');
        if (part.way().equals("draft") && !garment.isEmpty()) {
            String with = String.join(",", part.with());
            return Optional.of(KeptPattern.of(
                    String.join("/", "draft", garment, with, part.table()),
                    garment + ", drafted",
                    garment,
                    part.table(),
                    List.of()));
        }
        return part.way().equals("paper")
                ? Optional.of(
                        KeptPattern.of("paper/" + id, project.name() + ", on paper", garment, part.table(), List.of()))
                : Optional.empty();
    }

    static boolean isMadeHere(KeptPattern pattern) {
        return MADE_HERE.stream().anyMatch(pattern.madeOf()::startsWith)
                && pattern.note().isEmpty()
                && pattern.source().isEmpty();
    }

    static List<KeptSitting> sittings(Project project) {
        LengthUnit unit = project.person().bareUnit();
        return project.trial().sittings().stream()
                .map(sitting -> new KeptSitting(
                        sitting.date(),
                        sitting.seen().stream().map(seen -> seen(seen, unit)).toList()))
                .toList();
    }

    private static KeptSitting.Seen seen(TrialPart.Seen seen, LengthUnit unit) {
        return new KeptSitting.Seen(
                seen.symptom(),
                seen.cause(),
                seen.alteration(),
                seen.amount(),
                mm(seen.amount(), unit),
                seen.as(),
                seen.side(),
                seen.note());
    }

    private static OptionalDouble mm(String text, LengthUnit unit) {
        try {
            return OptionalDouble.of(Length.parse(text, unit).mm());
        } catch (LengthTextException e) {
            return OptionalDouble.empty(); // kept as it was typed; the screen says what is wrong with it
        }
    }
}
