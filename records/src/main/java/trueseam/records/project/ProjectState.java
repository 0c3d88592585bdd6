package trueseam.records.project;

/**
 * One state of a project.
 *
 * @param number goes up with every state; numbers of states that were dropped are not used again
 * @param label what led to it
 * @param field what was typed into, or empty
 * @param content all that was typed, as text
 */
public record ProjectState(long number, String label, String field, String content) {}
