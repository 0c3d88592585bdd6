package trueseam.records.sitting;

import java.util.OptionalDouble;

/**
 * One amount that was pinned on a person in one of her garments.
 *
 * @param project the project's mark
 * @param projectName what the project is called
 * @param date when, as typed; empty if not said
 * @param alteration the change, with + or -
 * @param side {@code both}, {@code left}, {@code right}, {@code centre}, or empty
 * @param amount as typed
 * @param amountMm millimetres; empty if what was typed is no length
 * @param measuredAs what the amount measures
 */
public record Evidence(
        String project,
        String projectName,
        String date,
        String alteration,
        String side,
        String amount,
        OptionalDouble amountMm,
        String measuredAs) {}
