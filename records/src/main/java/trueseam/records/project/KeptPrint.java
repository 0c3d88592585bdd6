package trueseam.records.project;

/**
 * Something that was printed of a fit.
 *
 * @param id its mark; empty before it is kept
 * @param project the project's mark
 * @param fit the fit's mark
 * @param kind what was printed, in one word
 * @param choices how, as text
 * @param madeAt milliseconds since 1970; 0 before it is kept
 */
public record KeptPrint(String id, String project, String fit, String kind, String choices, long madeAt) {}
