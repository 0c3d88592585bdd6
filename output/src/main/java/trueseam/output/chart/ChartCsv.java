package trueseam.output.chart;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.Change;
import trueseam.garment.length.LengthUnit;
import trueseam.output.csv.CsvSheet;
import trueseam.output.words.MeasureWords;

/**
 * The fitting chart as CSV (RFC 4180), for a spreadsheet: one line a measure, numbers in the user's unit as decimals, the unit in
 * the head of each column; an empty cell is a figure that is not known or not there.
 */
public final class ChartCsv {

    private ChartCsv() {}

    /**
     * Writes the chart.
     *
     * @param chart the chart
     * @return the file's text
     */
    public static String text(FittingChart chart) {
        LengthUnit unit = chart.fit().choices().show().unit();
        CsvSheet sheet = new CsvSheet(head(unit));
        chart.lines().forEach(line -> sheet.line(cells(line, unit)));
        return sheet.text();
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

    private static List<String> cells(ChartLine line, LengthUnit unit) {
        Need need = line.need();
        List<String> cells = new ArrayList<>();
        cells.add(need.measure().workroomLabel());
        cells.add(need.measure().term());
        cells.add(CsvSheet.number(need.body().mm(), unit));
        cells.add(
                line.sides().map(sides -> CsvSheet.number(sides.leftMm(), unit)).orElse(""));
        cells.add(line.sides()
                .map(sides -> CsvSheet.number(sides.rightMm(), unit))
                .orElse(""));
        String note = need.body().note();
        cells.add(MeasureWords.origin(need.body().origin()) + (note.isEmpty() ? "" : ": " + note));
        cells.add(CsvSheet.number(need.tableMm(), unit));
        cells.add(CsvSheet.number(need.flatMm(), unit));
        cells.add(CsvSheet.number(need.easeMm(), unit));
        cells.add(CsvSheet.number(need.minimumEaseMm(), unit));
        cells.add(CsvSheet.number(need.needMm(), unit));
        cells.add(CsvSheet.number(need.measuringErrorMm(), unit));
        cells.add(line.verdict());
        cells.add(need.decision().reason());
        cells.add(CsvSheet.number(need.decision().amountMm(), unit));
        cells.add(line.change().map(change -> String.valueOf(change.edges())).orElse(""));
        cells.add(line.change().map(Change::sharedOver).orElse(""));
        cells.add(line.change()
                .map(change -> CsvSheet.number(change.perEdgeMm(), unit))
                .orElse(""));
        cells.add(CsvSheet.number(line.afterMm(), unit));
        return cells;
    }
}
