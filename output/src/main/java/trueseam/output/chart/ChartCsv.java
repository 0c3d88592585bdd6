package trueseam.output.chart;

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
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.garment.length.LengthUnit;
import trueseam.output.words.MeasureWords;

/**
 * The fitting chart as CSV (RFC 4180), for a spreadsheet: one line a measure, numbers in the user's unit as decimals, the unit in
 * the head of each column; an empty cell is a figure that is not known or not there.
 */
public final class ChartCsv {

    /** More than any ruler shows; a ten-thousandth of an inch is 0.0025 mm. */
    private static final int DECIMALS = 4;

    private static final CsvMapper CSV = new CsvMapper();

    private ChartCsv() {}

    /**
     * Writes the chart.
     *
     * @param chart the chart
     * @return the file's text
     */
    public static String text(FittingChart chart) {
        LengthUnit unit = chart.fit().choices().show().unit();
        List<Map<String, String>> rows = new ArrayList<>();
        for (ChartLine line : chart.lines()) {
            rows.add(row(line, unit));
        }
        CsvSchema.Builder schema = CsvSchema.builder();
        head(unit).forEach(schema::addColumn);
        try {
            return CSV.writer(schema.build().withHeader()).writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("The fitting chart cannot be written as CSV.", e);
        }
    }

    private static List<String> head(LengthUnit unit) {
        String in = " (" + unit.sign() + ")";
        return List.of(
                "measure",
                "standard term",
                "body" + in,
                "left" + in,
                "right" + in,
                "origin",
                "table" + in,
                "flat pattern" + in,
                "ease" + in,
                "least ease" + in,
                "need" + in,
                "measuring error" + in,
                "decision",
                "reason",
                "in all" + in,
                "edges",
                "shared over",
                "per edge" + in,
                "after" + in);
    }

    private static Map<String, String> row(ChartLine line, LengthUnit unit) {
        Need need = line.need();
        List<String> cells = new ArrayList<>();
        cells.add(need.measure().workroomLabel());
        cells.add(need.measure().term());
        cells.add(number(need.body().mm(), unit));
        cells.add(line.sides().map(sides -> number(sides.leftMm(), unit)).orElse(""));
        cells.add(line.sides().map(sides -> number(sides.rightMm(), unit)).orElse(""));
        String note = need.body().note();
        cells.add(MeasureWords.origin(need.body().origin()) + (note.isEmpty() ? "" : ": " + note));
        cells.add(number(need.tableMm(), unit));
        cells.add(number(need.flatMm(), unit));
        cells.add(number(need.easeMm(), unit));
        cells.add(number(need.minimumEaseMm(), unit));
        cells.add(number(need.needMm(), unit));
        cells.add(number(need.measuringErrorMm(), unit));
        cells.add(line.verdict());
        cells.add(need.decision().reason());
        cells.add(number(need.decision().amountMm(), unit));
        cells.add(line.change().map(change -> String.valueOf(change.edges())).orElse(""));
        cells.add(line.change().map(Change::sharedOver).orElse(""));
        cells.add(line.change().map(change -> number(change.perEdgeMm(), unit)).orElse(""));
        cells.add(number(line.afterMm(), unit));
        Map<String, String> row = new LinkedHashMap<>();
        List<String> head = head(unit);
        for (int i = 0; i < cells.size(); i++) {
            row.put(head.get(i), cells.get(i));
        }
        return row;
    }

    private static String number(OptionalDouble mm, LengthUnit unit) {
        return mm.isPresent() ? number(mm.getAsDouble(), unit) : "";
    }

    private static String number(double mm, LengthUnit unit) {
        BigDecimal exact = BigDecimal.valueOf(mm)
                .divide(BigDecimal.valueOf(unit.mm()), DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }
}
