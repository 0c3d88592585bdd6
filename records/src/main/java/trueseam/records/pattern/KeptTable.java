package trueseam.records.pattern;

/**
 * A size table of the owner's own.
 *
 * @param id its mark; empty before it is kept
 * @param name what it is called
 * @param source where it comes from
 * @param file the mark of the file that it is in
 * @param archived whether it is put away
 * @param version goes up with every change; 0 before it is kept
 */
public record KeptTable(String id, String name, String source, String file, boolean archived, long version) {}
