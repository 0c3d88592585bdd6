package trueseam.records.sitting;

import java.util.List;

/** The sittings with trial garments of one owner. Safe for use by several threads. */
public interface Sittings {

    /**
     * The sittings of a project.
     *
     * @param project its mark
     * @return the earliest first
     */
    List<KeptSitting> of(String project);

    /**
     * Puts sittings in place of those that a project had.
     *
     * @param project its mark
     * @param sittings the sittings, the earliest first
     */
    void replaceOf(String project, List<KeptSitting> sittings);

    /**
     * What was pinned on a person over all her garments.
     *
     * @param person her mark
     * @return by alteration, then by the order of the projects and sittings
     */
    List<Evidence> evidence(String person);
}
