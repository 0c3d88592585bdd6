package trueseam.app.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;

/** Prints maps, lists and plain records of this room as JSON. */
public final class Json {

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Json() {}

    /**
     * Writes a value.
     *
     * @param value maps, lists, strings, numbers
     * @return indented JSON
     */
    public static String write(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a value of ours that is no JSON: " + e.getMessage(), e);
        }
    }
}
