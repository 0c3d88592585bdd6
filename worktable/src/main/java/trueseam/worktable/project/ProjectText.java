package trueseam.worktable.project;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Projects as text (JSON), with whatever an older version of the program did not know left out. */
final class ProjectText {

    private static final ObjectMapper JSON =
            new ObjectMapper().configure(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES, false);

    private ProjectText() {}

    static String of(Project project) {
        try {
            return JSON.writeValueAsString(project);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a project is plain text", e);
        }
    }

    static Project project(String text) {
        return read(text, Project.class, "A project in the record book");
    }

    /** A project with all its states, as the data folder had it before there was a record book. */
    static Kept kept(String text, String where) {
        return read(text, Kept.class, where);
    }

    private static <T> T read(String text, Class<T> type, String where) {
        try {
            return JSON.readValue(text, type);
        } catch (JsonProcessingException e) {
            throw new ShelfException(where + " cannot be read; put a backup in its place.", e);
        }
    }
}
