package trueseam.records.group;

/**
 * A project that a student shares.
 *
 * @param id its mark
 * @param owner the student's account
 * @param student what she is called
 * @param name the project's name
 * @param person what the person is called
 * @param changedAt when it was changed last, milliseconds since 1970
 */
public record SharedProject(String id, long owner, String student, String name, String person, long changedAt) {}
