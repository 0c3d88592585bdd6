package trueseam.intake.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/**
 * A table as a spreadsheet saves it.
 *
 * @param file what the user calls the file
 * @param remarks the {@code # name: value} lines before the header, in order; names in lower case
 * @param header the names of the columns as written, without blanks around them
 * @param rows the lines below the header, blank ones left out
 */
public record Sheet(String file, Map<String, String> remarks, List<String> header, List<SheetRow> rows) {

    private static final CsvMapper MAPPER = CsvMapper.builder()
            .enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.ALLOW_COMMENTS)
            .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
            .build();

    /**
     * Keeps copies.
     *
     * @param file as of the record
     * @param remarks as of the record
     * @param header as of the record
     * @param rows as of the record
     */
    public Sheet {
        remarks = Collections.unmodifiableMap(new LinkedHashMap<>(remarks));
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * Reads a sheet.
     *
     * @param file what the user calls the file
     * @param text its content
     * @return the sheet
     * @throws SheetException when it has no header line or its quotes do not close
     */
    public static Sheet read(String file, String text) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        List<SheetRow> lines = lines(file, plain);
        if (lines.isEmpty()) {
            throw new SheetException(
                    file, 0, "The file is empty; a header line and one line for each entry were expected.");
        }
        List<String> header = lines.get(0).cells().stream().map(String::strip).toList();
        return new Sheet(file, remarks(plain), header, lines.subList(1, lines.size()));
    }

    private static List<SheetRow> lines(String file, String text) {
        List<SheetRow> lines = new ArrayList<>();
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(text));
        try (MappingIterator<String[]> rows =
                MAPPER.readerFor(String[].class).with(schema).readValues(text)) {
            while (rows.hasNextValue()) {
                int line = rows.getParser().currentLocation().getLineNr();
                lines.add(new SheetRow(line, List.of(rows.nextValue())));
            }
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new SheetException(
                    file, line, "This cannot be read as a table; look for a quote mark that is not closed.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lines;
    }

    /** The sign that parts most cells of the header line. */
    private static char separator(String text) {
        String header = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        char best = ',';
        for (char sign : new char[] {';', '\t'}) {
            if (count(header, sign) > count(header, best)) {
                best = sign;
            }
        }
        return best;
    }

    private static long count(String line, char sign) {
        return line.chars().filter(c -> c == sign).count();
    }

    private static Map<String, String> remarks(String text) {
        Map<String, String> remarks = new LinkedHashMap<>();
        for (String line : text.lines().toList()) {
            if (!line.isBlank() && !line.startsWith("#")) {
                break;
            }
            int colon = line.indexOf(':');
            if (colon > 0) {
                remarks.put(
                        line.substring(1, colon).strip().toLowerCase(Locale.ROOT),
                        line.substring(colon + 1).strip());
            }
        }
        return remarks;
    }

    /**
     * Finds a column by its name; case and blanks around it do not matter.
     *
     * @param name the name
     * @return its place, from 0, or empty
     */
    public OptionalInt column(String name) {
        for (int column = 0; column < header.size(); column++) {
            if (header.get(column).equalsIgnoreCase(name)) {
                return OptionalInt.of(column);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Finds a column that the file cannot do without.
     *
     * @param name the name
     * @return its place, from 0
     * @throws SheetException when there is no such column
     */
    public int needColumn(String name) {
        return column(name)
                .orElseThrow(() -> new SheetException(
                        file,
                        0,
                        "The header has no column \"" + name + "\"; it is: " + String.join(", ", header) + "."));
    }

    /**
     * Writes the sheet with commas; {@link #read} gives remarks, header and cells back.
     *
     * @return the text, each line ended by a line feed
     */
    public String text() {
        StringWriter text = new StringWriter();
        remarks.forEach((name, value) ->
                text.append("# ").append(name).append(": ").append(value).append('\n'));
        CsvSchema schema = CsvSchema.emptySchema().withAllowComments(true);
        try (SequenceWriter rows = MAPPER.writer(schema).writeValues(text)) {
            rows.write(header);
            for (SheetRow row : rows()) {
                rows.write(row.cells());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
