package trueseam.worktable.work;

/**
 * Something typed that cannot be used; it is kept as it was typed.
 *
 * @param field the field's name on its screen
 * @param sentence what is wrong and what was expected
 */
public record Problem(String field, String sentence) {}
