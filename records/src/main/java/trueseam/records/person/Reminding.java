package trueseam.records.person;

import java.util.Optional;

/** When an owner wants to be told to measure people again. Safe for use by several threads. */
public interface Reminding {

    /**
     * After how long.
     *
     * @param months for whoever does not grow
     * @param growingMonths for whoever grows
     */
    record Pause(int months, int growingMonths) {}

    /**
     * What she wants.
     *
     * @return the pause; empty as long as she said nothing
     */
    Optional<Pause> told();

    /**
     * Keeps what she wants.
     *
     * @param pause after how long
     */
    void tell(Pause pause);
}
