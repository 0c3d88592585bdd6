package trueseam.fitting.repertoire;

/**
 * One way of doing an alteration, where handbooks differ.
 *
 * @param name how the user asks for it, for example {@code neck end}
 * @param reason when to choose it, and who says so
 * @param maker its steps
 */
public record Variant(String name, String reason, Maker maker) {}
