package trueseam.worktable.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Population;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.intake.sheet.ExactLength;
import trueseam.intake.survey.BroughtBody;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.PersonPart.Day;
import trueseam.worktable.project.PersonPart.Typed;

/** Turns a body that a file holds into readings as if they had been typed, one day for each date. */
final class Bringing {

    private Bringing() {}

    /** The person of the file, in the units that the page shows; her own days are replaced. */
    static PersonPart person(PersonPart now, BroughtBody brought, String today) {
        Body body = brought.file().body();
        TreeMap<String, List<Typed>> byDay = new TreeMap<>();
        for (Reading reading : body.readings()) {
            String day = reading.date().map(Object::toString).orElse("");
            byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(typed(reading, now));
        }
        List<Day> days = new ArrayList<>();
        // what has no date counts as older than any date, as it does in a body
        byDay.forEach((date, readings) ->
                days.add(new Day(byDay.size() == 1 && date.isEmpty() ? today : date, readings, "")));
        return new PersonPart(body.label(), now.units(), people(now, brought.people()), days);
    }

    private static Typed typed(Reading reading, PersonPart now) {
        String side = reading.side() == Side.BOTH ? "" : word(reading.side());
        String origin = reading.origin() == Origin.TAPED ? "" : word(reading.origin());
        return new Typed(
                reading.measure().term(),
                side,
                ExactLength.write(reading.mm(), now.bareUnit()),
                now.bareUnit().sign(),
                origin,
                reading.note());
    }

    private static String people(PersonPart now, Population people) {
        return people == Population.ALL ? now.people() : word(people);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
