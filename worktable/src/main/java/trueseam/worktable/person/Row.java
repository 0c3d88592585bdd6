package trueseam.worktable.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyChange;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Side;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.PersonPart.Typed;
import trueseam.worktable.work.TypedBody;

/**
 * One measure: its fields, what they come to, and what there is to say about them.
 *
 * @param measure the measure
 * @param fields its fields, at least one
 * @param apart whether left and right are taken apart
 * @param needed whether the chosen garment is fitted by it
 * @param wrong the marks of the fields whose text cannot be used
 * @param comesTo what the readings come to: their mean and spread, and the other unit
 * @param problems what cannot be used and why
 * @param doubts what is worth a second look
 * @param notes what to know
 * @param since what it was last time and how it has changed
 */
public record Row(
        Measure measure,
        List<Field> fields,
        boolean apart,
        boolean needed,
        List<String> wrong,
        String comesTo,
        List<String> problems,
        List<String> doubts,
        List<String> notes,
        List<Since> since) {

    /**
     * A difference to last time.
     *
     * @param text what it was and by how much it differs
     * @param beyond whether the difference is more than measuring error
     */
    public record Since(String text, boolean beyond) {}

    /** Does not change. */
    public Row {
        fields = List.copyOf(fields);
        wrong = List.copyOf(wrong);
        problems = List.copyOf(problems);
        doubts = List.copyOf(doubts);
        notes = List.copyOf(notes);
        since = List.copyOf(since);
    }

    /**
     * Where one goes on typing after asking for another reading.
     *
     * @param field the first field of a side
     * @return the mark of the field that will be added
     */
    public String next(Field field) {
        long have = fields.stream()
                .filter(other -> other.side().equals(field.side()))
                .count();
        return Field.id(measure, field.side(), (int) have);
    }

    /**
     * Where one goes on typing after taking the sides apart or together.
     *
     * @return the mark of that field
     */
    public String afterSides() {
        return Field.id(measure, apart ? "" : "left", 0);
    }

    /** Her body as it was on earlier days, and all that is otherwise now. */
    record Compared(Body before, List<BodyChange> changes) {}

    static Row of(Measure measure, PersonPart part, TypedBody typed, Compared compared, boolean needed) {
        List<Typed> readings = part.readings();
        boolean apart = Readings.isApart(readings, measure.term());
        List<Field> fields = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (String side : apart ? List.of("left", "right") : List.of("")) {
            List<Typed> own = Readings.of(readings, measure.term(), side);
            List<Typed> shown = own.isEmpty()
                    ? List.of(
                            new Typed(measure.term(), side, "", part.bareUnit().sign()))
                    : own;
            for (int at = 0; at < shown.size(); at++) {
                Field field = Field.of(measure, shown.get(at), at, part);
                fields.add(field);
                boolean unread = !shown.get(at).text().isBlank()
                        && Field.mm(shown.get(at)).isEmpty();
                boolean refused = typed.problems().stream().anyMatch(problem -> problem.field()
                        .equals(TypedBody.field(new Typed(measure.term(), side, "", ""))));
                if (unread || (refused && shown.size() == 1)) {
                    wrong.add(field.id());
                }
            }
        }
        return new Row(
                measure,
                fields,
                apart,
                needed,
                wrong,
                comesTo(measure, apart, readings, typed.body(), part),
                typed.problems().stream()
                        .filter(problem -> isOf(measure, problem.field()))
                        .map(problem -> side(problem.field()) + problem.sentence())
                        .distinct()
                        .toList(),
                said(measure, typed, Severity.WARNING),
                Stream.concat(said(measure, typed, Severity.NOTE).stream(), origin(measure, typed.body()))
                        .toList(),
                since(measure, compared, readings, part.format()));
    }

    private static boolean isOf(Measure measure, String place) {
        return place.equals(measure.term()) || place.startsWith(measure.term() + "/");
    }

    private static String side(String field) {
        int slash = field.lastIndexOf('/');
        return slash < 0 ? "" : MeasureWords.capital(field.substring(slash + 1)) + ": ";
    }

    private static List<String> said(Measure measure, TypedBody typed, Severity severity) {
        return typed.findings().stream()
                .filter(finding -> finding.severity() == severity && isOf(measure, finding.place()))
                .map((Finding finding) -> side(finding.place()) + finding.sentence())
                .distinct()
                .toList();
    }

    private static Stream<String> origin(Measure measure, Body body) {
        return body.value(measure).stream()
                .filter(value -> value.origin() != Origin.TAPED)
                .map(value -> "Not taped (" + MeasureWords.origin(value.origin()) + ")"
                        + (value.note().isEmpty() ? "" : ": " + value.note()) + ".");
    }

    private static String comesTo(Measure measure, boolean apart, List<Typed> readings, Body body, PersonPart part) {
        List<String> said = new ArrayList<>();
        for (Side side : apart ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.BOTH)) {
            String word = side == Side.BOTH ? "" : side.name().toLowerCase(java.util.Locale.ROOT);
            boolean today = Readings.of(readings, measure.term(), word).stream()
                    .anyMatch(typed -> Field.mm(typed).isPresent());
            Optional<BodyValue> value = today ? body.value(measure, side) : Optional.empty();
            value.ifPresent(v -> said.add((word.isEmpty() ? "" : word + " ") + comesTo(v, part)));
        }
        return String.join("; ", said);
    }

    private static String comesTo(BodyValue value, PersonPart part) {
        LengthFormat other = part.bareUnit() == LengthUnit.INCH ? LengthFormat.centimetres() : LengthFormat.inches(8);
        return value.readings() == 1
                ? other.show(value.mm())
                : "mean of " + value.readings() + " " + part.format().show(value.mm()) + ", " + other.show(value.mm())
                        + "; spread " + part.format().show(value.spreadMm());
    }

    private static List<Since> since(Measure measure, Compared compared, List<Typed> readings, LengthFormat show) {
        boolean today = readings.stream()
                .anyMatch(typed -> typed.measure().equals(measure.term())
                        && Field.mm(typed).isPresent());
        if (!today) {
            return compared.before().value(measure).stream()
                    .map(value -> new Since("Last time " + show.show(value.mm()), false))
                    .toList();
        }
        return compared.changes().stream()
                .filter(change -> change.measure() == measure)
                .map(change -> since(change, show))
                .toList();
    }

    private static Since since(BodyChange change, LengthFormat show) {
        String side = change.side() == Side.BOTH
                ? ""
                : MeasureWords.capital(change.side().name().toLowerCase(java.util.Locale.ROOT)) + ": ";
        return new Since(
                (side.isEmpty() ? "Last time " : side + "last time ") + show.show(change.beforeMm()) + ", now "
                        + difference(change, show),
                change.isBeyondMeasuringError());
    }

    static String difference(BodyChange change, LengthFormat show) {
        String more = show.show(Math.abs(change.moreMm()));
        boolean same = more.startsWith("0 ");
        return same ? "the same" : more + (change.moreMm() > 0 ? " more" : " less");
    }
}
