package trueseam.intake.body;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.sheet.SheetException;

/**
 * A body as JSON.
 *
 * <pre>
 * {"label": "Ann",
 *  "readings": [
 *    {"measure": "bust girth", "value": "38 1/2 in"},
 *    {"measure": "shoulder length", "value": "5 in", "side": "left", "date": "2026-03-09"}]}
 * </pre>
 *
 * <p>The words are those of {@link BodyCsv}; a value may also be a bare number in the unit of the {@link EntryRules}.
 */
public final class BodyJson {
    private static final ObjectMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private BodyJson() {}

    /**
     * Reads a body.
     *
     * @param file what the user calls the file; without a {@code label} it is also the body's label
     * @param text its content
     * @param rules how entries are taken
     * @return the body and the findings, reading by reading
     * @throws SheetException when it is not JSON or has no list {@code readings}
     */
    public static BodyFile read(String file, String text, EntryRules rules) {
        JsonNode root = parse(file, text);
        JsonNode list = root.path("readings");
        if (!list.isArray()) {
            throw new SheetException(
                    file, 0, "The list \"readings\" is missing; one entry for each reading was expected.");
        }
        List<Reading> readings = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            JsonNode node = list.get(i);
            Entry entry = new Entry(
                    node.path("measure").asText(""),
                    node.path("value").asText(""),
                    node.path("side").asText(""),
                    node.path("date").asText(""),
                    node.path("origin").asText(""),
                    node.path("note").asText(""));
            Entry.Outcome outcome = entry.read(file + ", reading " + (i + 1), rules);
            outcome.reading().ifPresent(readings::add);
            outcome.finding().ifPresent(findings::add);
        }
        return new BodyFile(new Body(BodyFile.label(root.path("label").asText(""), file), readings), findings);
    }

    private static JsonNode parse(String file, String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw new SheetException(
                    file,
                    e.getLocation() == null ? 0 : e.getLocation().getLineNr(),
                    "This is not JSON: " + e.getOriginalMessage() + ".");
        }
    }

    /**
     * Writes a body; reading it gives an equal body back.
     *
     * @param body the body
     * @param wished the unit to write in; a value that this unit cannot show exactly is written in millimetres
     * @return the JSON text
     */
    public static String write(Body body, LengthUnit wished) {
        ObjectNode root = MAPPER.createObjectNode().put("label", body.label());
        var list = root.putArray("readings");
        for (Reading reading : body.readings()) {
            Entry entry = Entry.of(reading, wished);
            ObjectNode node = list.addObject().put("measure", entry.measure()).put("value", entry.value());
            putIfAny(node, "side", entry.side());
            putIfAny(node, "date", entry.date());
            putIfAny(node, "origin", entry.origin());
            putIfAny(node, "note", entry.note());
        }
        try {
            return MAPPER.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of texts could not be written", e);
        }
    }

    private static void putIfAny(ObjectNode node, String name, String text) {
        if (!text.isEmpty()) {
            node.put(name, text);
        }
    }
}
