package trueseam.worktable.person;

import java.util.Optional;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.PersonPart.Typed;

/**
 * One field for one reading.
 *
 * @param id its mark on the page
 * @param measure the measure
 * @param side {@code left}, {@code right} or empty
 * @param at which reading of that measure and side, 0 for the first
 * @param shown what stands in it
 * @param name what it is called for those who hear the page
 * @param unit what its number is in
 */
public record Field(String id, Measure measure, String side, int at, String shown, String name, String unit) {

    static Field of(Measure measure, Typed typed, int at, PersonPart part) {
        String side = typed.side();
        String name = measure.workroomLabel()
                + (side.isEmpty() ? "" : ", " + side)
                + (at == 0 ? "" : ", reading " + (at + 1));
        return new Field(
                id(measure, side, at),
                measure,
                side,
                at,
                shown(typed, part),
                name,
                part.bareUnit().sign());
    }

    static String id(Measure measure, String side, int at) {
        return "f-" + measure.name() + (side.isEmpty() ? "" : "-" + side) + "-" + at;
    }

    /** As it was typed if that was in the unit shown; else converted, and what was typed stays kept. */
    private static String shown(Typed typed, PersonPart part) {
        boolean asTyped = typed.bareUnit() == part.bareUnit() && !namesItsUnit(typed.text());
        return asTyped
                ? typed.text()
                : mm(typed).map(mm -> part.format().number(mm)).orElse(typed.text());
    }

    private static boolean namesItsUnit(String text) {
        return mm(text, LengthUnit.INCH).equals(mm(text, LengthUnit.CENTIMETRE));
    }

    /** What the typed text comes to, if it can be read. */
    static Optional<Double> mm(Typed typed) {
        return mm(typed.text(), typed.bareUnit());
    }

    private static Optional<Double> mm(String text, LengthUnit unit) {
        try {
            return Optional.of(Length.parse(text, unit).mm());
        } catch (LengthTextException e) {
            return Optional.empty(); // said beside the field
        }
    }
}
