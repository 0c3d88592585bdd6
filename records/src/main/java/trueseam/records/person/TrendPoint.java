package trueseam.records.person;

/**
 * One point of a measure's trend.
 *
 * @param date ISO date; empty if not said
 * @param side {@code left}, {@code right}, or empty
 * @param mm millimetres
 * @param origin empty for the tape; {@code stand-in}, {@code estimated} or {@code table}
 */
public record TrendPoint(String date, String side, double mm, String origin) {}
