package trueseam.worktable.project;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.body.Population;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

/**
 * A person and her measures as they were typed.
 *
 * @param label what she is called; printed on the pieces
 * @param units what lengths are shown in: {@code in}, {@code in16} (to the nearest sixteenth) or {@code cm}
 * @param people whose usual measures hers are held against: {@code women}, {@code men}, or empty
 * @param days days on which she was measured, the earliest first; of each measure the last day that has it counts
 */
public record PersonPart(String label, String units, String people, List<Day> days) {

    /**
     * One day of measuring.
     *
     * @param date ISO date, empty if not said
     * @param readings what was read
     * @param note anything else
     */
    public record Day(String date, List<Typed> readings, String note) {

        /** What is not there is empty. */
        public Day {
            date = date == null ? "" : date;
            readings = readings == null ? List.of() : List.copyOf(readings);
            note = note == null ? "" : note;
        }
    }

    /**
     * One reading as it was typed, readable or not.
     *
     * @param measure the measure's standard term
     * @param side {@code left}, {@code right}, or empty
     * @param text what was typed
     * @param unit the unit of a bare number, {@code in} or {@code cm}
     * @param origin empty for the tape; {@code stand-in}, {@code estimated} or {@code table}
     * @param note what a file says about it
     */
    public record Typed(String measure, String side, String text, String unit, String origin, String note) {

        /** What is not there is empty. */
        public Typed {
            side = side == null ? "" : side;
            text = text == null ? "" : text;
            unit = unit == null || unit.isEmpty() ? "in" : unit;
            origin = origin == null ? "" : origin;
            note = note == null ? "" : note;
        }

        /**
         * A reading of the tape.
         *
         * @param measure as of the record
         * @param side as of the record
         * @param text as of the record
         * @param unit as of the record
         */
        public Typed(String measure, String side, String text, String unit) {
            this(measure, side, text, unit, "", "");
        }

        /**
         * The unit of a bare number.
         *
         * @return the unit
         */
        public LengthUnit bareUnit() {
            return unit.equals("cm") ? LengthUnit.CENTIMETRE : LengthUnit.INCH;
        }
    }

    /** What is not there is empty. */
    public PersonPart {
        label = label == null ? "" : label;
        units = units == null || units.isEmpty() ? "in" : units;
        people = people == null ? "" : people;
        days = days == null ? List.of() : List.copyOf(days);
    }

    /**
     * Nobody yet.
     *
     * @return nobody
     */
    public static PersonPart empty() {
        return new PersonPart("", "in", "", List.of());
    }

    /**
     * A person of whom it is not said whose usual measures hers are held against.
     *
     * @param label as of the record
     * @param units as of the record
     * @param days as of the record
     */
    public PersonPart(String label, String units, List<Day> days) {
        this(label, units, "", days);
    }

    /**
     * Whose usual measures hers are held against.
     *
     * @return women, men, or all
     */
    public Population population() {
        return switch (people) {
            case "women" -> Population.WOMEN;
            case "men" -> Population.MEN;
            default -> Population.ALL;
        };
    }

    /**
     * How lengths are shown.
     *
     * @return the format
     */
    public LengthFormat format() {
        return switch (units) {
            case "cm" -> LengthFormat.centimetres();
            case "in16" -> LengthFormat.inches(16);
            default -> LengthFormat.inches(8);
        };
    }

    /**
     * The unit of a bare number typed now.
     *
     * @return the unit
     */
    public LengthUnit bareUnit() {
        return units.equals("cm") ? LengthUnit.CENTIMETRE : LengthUnit.INCH;
    }

    /**
     * What was read on the day that is being measured.
     *
     * @return the readings of the last day
     */
    public List<Typed> readings() {
        return today().readings();
    }

    /**
     * The day that is being measured.
     *
     * @return the last day; one without date and readings if there is none
     */
    public Day today() {
        return days.isEmpty() ? new Day("", List.of(), "") : days.get(days.size() - 1);
    }

    /**
     * The person as she was before the last day.
     *
     * @return without the last day
     */
    public PersonPart before() {
        return new PersonPart(label, units, people, days.isEmpty() ? days : days.subList(0, days.size() - 1));
    }

    /**
     * The same with another last day.
     *
     * @param day the day
     * @return the person
     */
    public PersonPart withToday(Day day) {
        List<Day> all = new ArrayList<>(before().days());
        all.add(day);
        return new PersonPart(label, units, people, all);
    }

    /**
     * The same with one more day.
     *
     * @param day the day
     * @return the person
     */
    public PersonPart withNextDay(Day day) {
        List<Day> all = new ArrayList<>(days);
        all.add(day);
        return new PersonPart(label, units, people, all);
    }

    /**
     * The same with other readings on the last day.
     *
     * @param readings what was read
     * @return the person
     */
    public PersonPart withReadings(List<Typed> readings) {
        return withToday(new Day(today().date(), readings, today().note()));
    }
}
