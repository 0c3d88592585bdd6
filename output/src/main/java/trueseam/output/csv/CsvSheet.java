package trueseam.output.csv;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trueseam.garment.length.LengthUnit;

/** A sheet that is filled line by line and then written; used by one thread. An empty cell is a figure that is not known or not there. */
public final class CsvSheet {

    /** More than any ruler shows; a ten-thousandth of an inch is 0.0025 mm. */
    private static final int DECIMALS = 4;

    private static final CsvMapper CSV = new CsvMapper();

    private final List<String> head;
    private final List<Map<String, String>> lines = new ArrayList<>();

    /**
     * A sheet with no lines yet.
     *
     * @param head the heads of its columns, each another one
     */
    public CsvSheet(List<String> head) {
        this.head = List.copyOf(head);
    }

    /**
     * Adds a line.
     *
     * @param cells one for each column, in its order
     */
    public void line(List<String> cells) {
        if (cells.size() != head.size()) {
            throw new IllegalArgumentException("A line of " + cells.size() + " cells below " + head.size() + " heads.");
        }
        Map<String, String> line = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            line.put(head.get(i), cells.get(i));
        }
        lines.add(line);
    }

    /**
     * Writes it.
     *
     * @return the file's text
     */
    public String text() {
        CsvSchema.Builder schema = CsvSchema.builder();
        head.forEach(schema::addColumn);
        try {
            return CSV.writer(schema.build().withHeader()).writeValueAsString(lines);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("The figures cannot be written as CSV.", e);
        }
    }

    /**
     * A length as a cell.
     *
     * @param mm millimetres, where it is known
     * @param unit the user's unit
     * @return a decimal number; empty where it is not known
     */
    public static String number(OptionalDouble mm, LengthUnit unit) {
        return mm.isPresent() ? number(mm.getAsDouble(), unit) : "";
    }

    /**
     * A length as a cell.
     *
     * @param mm millimetres
     * @param unit the user's unit
     * @return a decimal number
     */
    public static String number(double mm, LengthUnit unit) {
        BigDecimal exact = BigDecimal.valueOf(mm)
                .divide(BigDecimal.valueOf(unit.mm()), DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }
}
