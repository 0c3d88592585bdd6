package trueseam.records.group;

/**
 * A class that a student is in.
 *
 * @param id its mark
 * @param name what it is called
 * @param teacher what its teacher is called
 */
public record JoinedClass(String id, String name, String teacher) {}
