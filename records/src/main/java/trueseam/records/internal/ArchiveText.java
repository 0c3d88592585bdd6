package trueseam.records.internal;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.records.archive.ArchiveException;

/** The texts in an archive: CSV (RFC 4180) with a head line, and JSON. Both are read back to the same characters. */
final class ArchiveText {

    private static final CsvMapper CSV = CsvMapper.csvBuilder()
            .enable(CsvGenerator.Feature.ALWAYS_QUOTE_STRINGS)
            .enable(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
            .build();

    private static final ObjectMapper JSON = new ObjectMapper()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private static final ObjectMapper AS_TYPED =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    /** Columns that archives of earlier versions have. Until version 5 of the tables a person was shared with all classes or none. */
    private static final Map<String, Set<String>> FORMER = Map.of("people.csv", Set.of("shared"));

    private ArchiveText() {}

    static byte[] csv(List<String> columns, List<Map<String, String>> rows) {
        CsvSchema.Builder schema = CsvSchema.builder();
        columns.forEach(schema::addColumn);
        try {
            return CSV.writer(schema.build().withHeader())
                    .writeValueAsString(rows)
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of a table, each with all of its columns; what only earlier versions had is left out. */
    static List<Map<String, String>> rows(String name, byte[] csv, List<String> columns) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (MappingIterator<Map<String, String>> lines = CSV.readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(new String(csv, StandardCharsets.UTF_8))) {
            while (lines.hasNextValue()) {
                Map<String, String> row = lines.nextValue();
                FORMER.getOrDefault(name, Set.of()).forEach(row::remove);
                if (!row.keySet().equals(new HashSet<>(columns))) {
                    throw new ArchiveException(name + " has not the columns " + String.join(", ", columns));
                }
                rows.add(row);
            }
        } catch (IOException e) {
            throw new ArchiveException(name + " is no CSV");
        }
        return rows;
    }

    static byte[] json(JsonNode json) {
        try {
            return JSON.writeValueAsBytes(json);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode json(String name, byte[] text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new ArchiveException(name + " is no JSON");
        }
    }

    static ObjectNode object() {
        return JSON.createObjectNode();
    }

    /** A project with its states; numbers as texts, as in the CSV. */
    static byte[] project(Map<String, String> project, List<Map<String, String>> states) {
        ObjectNode json = object();
        project.forEach(json::put);
        ArrayNode each = json.putArray("states");
        for (Map<String, String> state : states) {
            ObjectNode one = each.addObject();
            state.forEach((name, cell) -> {
                if (name.equals("content")) {
                    one.set(name, typed(cell));
                } else if (!name.equals("project_id")) {
                    one.put(name, cell);
                }
            });
        }
        return json(json);
    }

    /** What was typed, to be read by other programs; as plain text where that would not come back to the same characters. */
    private static JsonNode typed(String content) {
        try {
            JsonNode tree = AS_TYPED.readTree(content);
            if (tree != null
                    && tree.isObject()
                    && AS_TYPED.writeValueAsString(tree).equals(content)) {
                // numbers are read back as decimals, which keep 0.10 as it is written
                JsonNode again = JSON.readTree(JSON.writeValueAsString(tree));
                if (AS_TYPED.writeValueAsString(again).equals(content)) {
                    return tree;
                }
            }
        } catch (JsonProcessingException e) {
            // not JSON: it stays text
        }
        return JSON.getNodeFactory().textNode(content);
    }

    /** The states of a project that was read. */
    static List<Map<String, String>> states(String name, String project, JsonNode json) {
        List<Map<String, String>> states = new ArrayList<>();
        for (JsonNode one : json.path("states")) {
            Map<String, String> state = cells(one, List.of("number", "label", "field"), name);
            state.put("project_id", project);
            JsonNode content = one.path("content");
            try {
                state.put("content", content.isObject() ? AS_TYPED.writeValueAsString(content) : content.asText());
            } catch (JsonProcessingException e) {
                throw new UncheckedIOException(e);
            }
            states.add(state);
        }
        if (states.isEmpty()) {
            throw new ArchiveException(name + " has no states");
        }
        return states;
    }

    static Map<String, String> cells(JsonNode json, List<String> columns, String name) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String column : columns) {
            if (!json.path(column).isTextual()) {
                throw new ArchiveException(name + " has no " + column);
            }
            cells.put(column, json.get(column).asText());
        }
        return cells;
    }
}
