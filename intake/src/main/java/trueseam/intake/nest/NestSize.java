package trueseam.intake.nest;

/**
 * One size of a nest.
 *
 * @param name as the drawing calls it, such as {@code 14}; where it says nothing, its place from the smallest, such as {@code 2 of 6}
 * @param evidence by what it is told from the others, and what names it
 * @param sure from 0 to 1, how sure it is that these lines are this size
 */
public record NestSize(String name, String evidence, double sure) {}
