package trueseam.records.project;

import java.util.Optional;

/**
 * One garment for one person, as a line of the list.
 *
 * @param id its mark
 * @param head what it is about
 * @param personLabel what the person is called, or empty
 * @param garment what the pattern makes, or empty
 * @param state the number of the present state
 * @param archived whether it is put away
 * @param changedAt when it was changed last, milliseconds since 1970
 * @param version goes up with every change
 */
public record KeptProject(
        String id,
        Head head,
        String personLabel,
        String garment,
        long state,
        boolean archived,
        long changedAt,
        long version) {

    /**
     * What a project is about.
     *
     * @param name what it is called
     * @param person the person's mark
     * @param pattern the pattern's mark
     * @param size the size, or empty
     */
    public record Head(String name, Optional<String> person, Optional<String> pattern, String size) {}
}
