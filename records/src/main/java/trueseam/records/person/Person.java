package trueseam.records.person;

import java.util.Objects;
import java.util.Optional;

/**
 * Somebody who is fitted.
 *
 * @param id her mark; empty before she is kept
 * @param label what the owner calls her, perhaps empty; private
 * @param note anything else
 * @param units what her lengths are shown in: {@code in}, {@code in16} or {@code cm}
 * @param population whose usual measures hers are held against: {@code women}, {@code men}, or empty
 * @param photo the mark of a picture of her
 * @param archived whether she is put away
 * @param changedAt when she was changed last, milliseconds since 1970; 0 before she is kept
 * @param version goes up with every change; 0 before she is kept
 */
public record Person(
        String id,
        String label,
        String note,
        String units,
        String population,
        Optional<String> photo,
        boolean archived,
        long changedAt,
        long version) {

    /** Nothing is null. */
    public Person {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(population, "population");
        Objects.requireNonNull(photo, "photo");
    }

    /**
     * Somebody who is not kept yet.
     *
     * @param label what she is called
     * @param units as of the record
     * @param population as of the record
     * @return the person
     */
    public static Person named(String label, String units, String population) {
        return new Person("", label, "", units, population, Optional.empty(), false, 0, 0);
    }

    /**
     * The same called otherwise and measured otherwise.
     *
     * @param otherLabel what she is called
     * @param otherUnits as of the record
     * @param otherPopulation as of the record
     * @return the person
     */
    public Person with(String otherLabel, String otherUnits, String otherPopulation) {
        return new Person(id, otherLabel, note, otherUnits, otherPopulation, photo, archived, changedAt, version);
    }

    /**
     * The same with another note.
     *
     * @param other the note
     * @return the person
     */
    public Person withNote(String other) {
        return new Person(id, label, other, units, population, photo, archived, changedAt, version);
    }

    /**
     * The same with another picture, or none.
     *
     * @param other the mark of the picture
     * @return the person
     */
    public Person withPhoto(Optional<String> other) {
        return new Person(id, label, note, units, population, other, archived, changedAt, version);
    }

    /**
     * The same put away, or taken out again.
     *
     * @param other whether she is put away
     * @return the person
     */
    public Person withArchived(boolean other) {
        return new Person(id, label, note, units, population, photo, other, changedAt, version);
    }
}
