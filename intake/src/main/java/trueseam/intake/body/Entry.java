package trueseam.intake.body;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.body.BodyMeasureException;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.intake.sheet.ExactLength;

/** One reading as the words of a file: what CSV and JSON have in common. */
record Entry(String measure, String value, String side, String date, String origin, String note) {

    static Entry of(Reading reading, LengthUnit wished) {
        return new Entry(
                reading.measure().term(),
                ExactLength.write(reading.mm(), wished),
                reading.side() == Side.BOTH ? "" : word(reading.side()),
                reading.date().map(LocalDate::toString).orElse(""),
                reading.origin() == Origin.TAPED ? "" : word(reading.origin()),
                reading.note());
    }

    /** What came of one entry: the reading, and what is doubtful or wrong about it. */
    record Outcome(Optional<Reading> reading, Optional<Finding> finding) {}

    Outcome read(String place, EntryRules rules) {
        try {
            Reading reading = reading(rules.bareUnit());
            Optional<Finding> finding = rules.plausibility()
                    .question(reading.measure(), reading.mm(), rules.population())
                    .map(found -> new Finding(
                            found.severity(), place, reading.measure().term() + ": " + found.sentence()));
            boolean impossible = finding.filter(found -> found.severity() == Severity.FAILURE)
                    .isPresent();
            return new Outcome(impossible ? Optional.empty() : Optional.of(reading), finding);
        } catch (UnknownMeasureException | LengthTextException | BodyMeasureException | EntryException e) {
            return new Outcome(Optional.empty(), Optional.of(Finding.failure(place, e.getMessage())));
        }
    }

    private Reading reading(LengthUnit bareUnit) {
        Measure known = Measure.named(measure);
        return new Reading(
                known,
                side.isBlank() ? Side.BOTH : constant(Side.class, "side", side),
                Length.parse(value, bareUnit).mm(),
                date.isBlank() ? Optional.empty() : Optional.of(day()),
                origin.isBlank() ? Origin.TAPED : constant(Origin.class, "origin", origin),
                note);
    }

    private LocalDate day() {
        try {
            return LocalDate.parse(date.strip());
        } catch (DateTimeException e) {
            throw new EntryException("date", date, "a date such as 2026-03-09 was expected", e);
        }
    }

    private static <E extends Enum<E>> E constant(Class<E> type, String column, String written) {
        for (E constant : type.getEnumConstants()) {
            if (word(constant).equalsIgnoreCase(written.strip())) {
                return constant;
            }
        }
        StringBuilder expected = new StringBuilder();
        for (E constant : type.getEnumConstants()) {
            expected.append(expected.isEmpty() ? "" : ", ").append(word(constant));
        }
        throw new EntryException(column, written, "one of " + expected + " was expected", null);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
