package trueseam.worktable.project;

import java.util.List;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

/**
 * A person and her measures as they were typed.
 *
 * @param label what she is called; printed on the pieces
 * @param units what lengths are shown in: {@code in}, {@code in16} (to the nearest sixteenth) or {@code cm}
 * @param days days on which she was measured, the earliest first; the last one counts
 */
public record PersonPart(String label, String units, List<Day> days) {

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
     */
    public record Typed(String measure, String side, String text, String unit) {

        /** What is not there is empty. */
        public Typed {
            side = side == null ? "" : side;
            text = text == null ? "" : text;
            unit = unit == null || unit.isEmpty() ? "in" : unit;
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
        days = days == null ? List.of() : List.copyOf(days);
    }

    /**
     * Nobody yet.
     *
     * @return nobody
     */
    public static PersonPart empty() {
        return new PersonPart("", "in", List.of());
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
     * The readings that count.
     *
     * @return those of the last day
     */
    public List<Typed> readings() {
        return days.isEmpty() ? List.of() : days.get(days.size() - 1).readings();
    }

    /**
     * The same with other readings on the last day.
     *
     * @param readings what was read
     * @return the person
     */
    public PersonPart withReadings(List<Typed> readings) {
        List<Day> all = new java.util.ArrayList<>(days);
        Day last = all.isEmpty() ? new Day("", List.of(), "") : all.remove(all.size() - 1);
        all.add(new Day(last.date(), readings, last.note()));
        return new PersonPart(label, units, all);
    }
}
