package trueseam.output.chart;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.length.LengthFormat;
import trueseam.output.drawing.Align;
import trueseam.output.drawing.Lettering;
import trueseam.output.sheet.SheetFlow;
import trueseam.output.sheet.SheetTable;
import trueseam.output.sheet.SheetTable.Cell;
import trueseam.output.sheet.SheetTable.Column;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.RulerLength;

/** What each way of changing the sleeve's girth costs, side by side. */
final class SleeveTable {

    private static final Lettering HEADING = Lettering.of(3.6).heavy();

    private final SheetFlow flow;
    private final LengthFormat show;
    private final RulerLength ruler;

    SleeveTable(SheetFlow flow, LengthFormat show, RulerLength ruler) {
        this.flow = flow;
        this.show = show;
        this.ruler = ruler;
    }

    void set(List<SleeveCost> costs) {
        flow.down(2.5);
        flow.need(14 + 9.0 * costs.size());
        flow.paragraph("What the sleeve's girth costs (before, after, change)", HEADING, 0.5);
        List<List<Cell>> rows = new ArrayList<>();
        for (SleeveCost cost : costs) {
            SleeveFigures before = cost.before();
            SleeveFigures after = cost.after();
            Cell way = Cell.of(
                    MeasureWords.capital(cost.word()), cost.taken() ? "taken in this fit" : "the other way, not taken");
            rows.add(List.of(
                    cost.taken() ? way.heavier() : way,
                    figure(before.capHeightMm(), after.capHeightMm()),
                    figure(before.capSeamMm(), after.capSeamMm()),
                    before.armholeMm() > 0 ? figure(before.capEaseMm(), after.capEaseMm()) : Cell.of("no armhole"),
                    figure(before.underarmSeamMm(), after.underarmSeamMm())));
        }
        List<Column> columns = List.of(
                new Column("Way", 40, Align.LEFT),
                new Column("Cap height", 34, Align.RIGHT),
                new Column("Cap seam", 34, Align.RIGHT),
                new Column("Cap ease (cap less armhole)", 34, Align.RIGHT),
                new Column("Seam under the arm", 34, Align.RIGHT));
        new SheetTable(flow, columns, flow.width() * 0.7).set(rows);
        flow.down(1);
    }

    private Cell figure(double before, double after) {
        // Two figures that a hair parts may round to different eighths: one figure is the truer word for no change.
        return ruler.isHidden(after - before)
                ? Cell.of(show.show(before), "no change")
                : Cell.of(show.show(before) + " \u2192 " + show.show(after), ruler.showSigned(after - before));
    }
}
