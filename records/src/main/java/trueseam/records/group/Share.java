package trueseam.records.group;

import java.util.Optional;

/**
 * Something that a student shares with the teacher of one class; either a person or a project.
 *
 * @param taughtClass the mark of the class
 * @param person the mark of a person who is shared with all her projects
 * @param project the mark of a project that is shared alone
 */
public record Share(String taughtClass, Optional<String> person, Optional<String> project) {}
