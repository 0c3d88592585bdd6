package trueseam.worktable.work;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyMeasureException;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.intake.body.EntryRules;
import trueseam.worktable.project.PersonPart;

/**
 * A body from what was typed.
 *
 * @param body what could be read
 * @param problems what could not, by field name ({@code standard term} or {@code standard term/left})
 * @param findings what is doubtful, each at its field name
 */
public record TypedBody(Body body, List<Problem> problems, List<Finding> findings) {

    /** Does not change. */
    public TypedBody {
        problems = List.copyOf(problems);
        findings = List.copyOf(findings);
    }

    /**
     * Reads a person's measures: of each measure the last day that has it counts.
     *
     * @param person what was typed
     * @param rules what is plausible
     * @return the body, and what is wrong or doubtful about the last day
     */
    public static TypedBody of(PersonPart person, EntryRules rules) {
        List<Reading> readings = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        EntryRules hers = rules.withPopulation(person.population());
        Optional<LocalDate> date = Optional.empty();
        boolean first = true;
        for (PersonPart.Day day : person.days()) {
            problems.clear(); // of an earlier day nothing can be mended any more
            findings.clear();
            date = first ? date(day.date()) : Optional.of(after(date, date(day.date())));
            first = false;
            for (PersonPart.Typed typed : day.readings()) {
                if (!typed.text().isBlank()) {
                    read(typed, date, hers, problems, findings).ifPresent(readings::add);
                }
            }
        }
        String name = person.label().strip().isEmpty()
                ? "No name yet"
                : person.label().strip();
        Body body = new Body(name, readings);
        findings.addAll(body.findings());
        return new TypedBody(body, problems, findings);
    }

    /** Days stand in their order even where a date is missing or wrong: then it is taken as the next day. */
    private static LocalDate after(Optional<LocalDate> before, Optional<LocalDate> typed) {
        LocalDate next = before.orElse(LocalDate.EPOCH).plusDays(1);
        return typed.filter(day -> !day.isBefore(next)).orElse(next);
    }

    private static Optional<Reading> read(
            PersonPart.Typed typed,
            Optional<LocalDate> date,
            EntryRules rules,
            List<Problem> problems,
            List<Finding> findings) {
        String field = field(typed);
        try {
            Reading reading = reading(typed, date);
            Optional<Finding> doubt =
                    rules.plausibility().question(reading.measure(), reading.mm(), rules.population());
            if (doubt.filter(d -> d.severity() == Severity.FAILURE).isPresent()) {
                problems.add(new Problem(field, doubt.orElseThrow().sentence()));
                return Optional.empty();
            }
            doubt.ifPresent(d -> findings.add(d.at(field)));
            return Optional.of(reading);
        } catch (LengthTextException | BodyMeasureException | UnknownMeasureException e) {
            problems.add(new Problem(field, e.getMessage()));
            return Optional.empty();
        }
    }

    private static Reading reading(PersonPart.Typed typed, Optional<LocalDate> date) {
        Side side =
                typed.side().isEmpty() ? Side.BOTH : Side.valueOf(typed.side().toUpperCase(Locale.ROOT));
        return new Reading(
                Measure.named(typed.measure()),
                side,
                Length.parse(typed.text(), typed.bareUnit()).mm(),
                date,
                origin(typed.origin()),
                typed.note());
    }

    private static Origin origin(String word) {
        return switch (word) {
            case "stand-in" -> Origin.STAND_IN;
            case "estimated" -> Origin.ESTIMATED;
            case "table" -> Origin.TABLE;
            default -> Origin.TAPED;
        };
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty(); // the screen shows what was typed; no measure depends on it
        }
    }

    /**
     * The name of a reading's field.
     *
     * @param typed the reading
     * @return {@code standard term} or {@code standard term/left}
     */
    public static String field(PersonPart.Typed typed) {
        return typed.side().isEmpty() ? typed.measure() : typed.measure() + "/" + typed.side();
    }
}
