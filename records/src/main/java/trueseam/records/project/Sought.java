package trueseam.records.project;

import java.util.Optional;

/**
 * Which projects are looked for.
 *
 * @param text a part of the project's name, the person's label, or the pattern's name or garment, in any case; empty: any
 * @param person only of this person
 * @param pattern only with this pattern
 * @param archivedToo whether those put away are among them
 */
public record Sought(String text, Optional<String> person, Optional<String> pattern, boolean archivedToo) {

    /**
     * All that are not put away.
     *
     * @return all
     */
    public static Sought all() {
        return new Sought("", Optional.empty(), Optional.empty(), false);
    }

    /**
     * All projects of a person, those put away too.
     *
     * @param person her mark
     * @return hers
     */
    public static Sought of(String person) {
        return new Sought("", Optional.of(person), Optional.empty(), true);
    }
}
