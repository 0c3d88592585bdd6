package trueseam.records.access;

/**
 * Somebody looked at or changed the measures of a person.
 *
 * @param account who
 * @param person the person's mark
 * @param what what was done, in one word such as {@code looked}, {@code changed}, {@code exported}, {@code erased}
 * @param at milliseconds since 1970
 */
public record Access(long account, String person, String what, long at) {}
