package trueseam.output.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.output.drawing.Align;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PdfBook;
import trueseam.output.sheet.SheetFlow;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.sheet.SheetTable;
import trueseam.output.sheet.SheetTable.Cell;
import trueseam.output.sheet.SheetTable.Column;
import trueseam.output.words.EaseWords;
import trueseam.output.words.LevelWords;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.ProofWords;
import trueseam.output.words.RulerLength;
import trueseam.output.words.Unbroken;

/** The fitting chart as a PDF: the table, then size, sleeve, warnings, proofs and footnotes. */
public final class ChartSheet {

    private static final String CAUTIONS =
            "Sew a trial garment before you cut good cloth. Children's clothing and flame"
                    + " safety: follow your local rules.";

    private static final Lettering TITLE = Lettering.of(6).heavy();
    private static final Lettering HEADING = Lettering.of(3.6).heavy();
    private static final Lettering TEXT = Lettering.of(3);

    private static final List<Column> COLUMNS = List.of(
            new Column("Measure", 33, Align.LEFT),
            new Column("Body", 17, Align.RIGHT),
            new Column("Size table", 16, Align.RIGHT),
            new Column("Flat pattern", 18, Align.RIGHT),
            new Column("Ease", 23, Align.RIGHT),
            new Column("Least ease", 14, Align.RIGHT),
            new Column("Need", 19, Align.RIGHT),
            new Column("Decision and why", 52, Align.LEFT),
            new Column("In all", 15, Align.RIGHT),
            new Column("At each edge", 24, Align.LEFT),
            new Column("Measured after", 21, Align.RIGHT));

    private final FittingChart chart;
    private final FitResult fit;
    private final LengthFormat show;
    private final RulerLength ruler;
    private final SheetFlow flow;
    private final List<String> footnotes = new ArrayList<>();

    private ChartSheet(FittingChart chart, SheetFlow flow) {
        this.chart = chart;
        this.fit = chart.fit();
        this.show = fit.choices().show();
        this.ruler = new RulerLength(show);
        this.flow = flow;
    }

    /**
     * Sets the chart.
     *
     * @param chart the chart
     * @param paper what it is printed on
     * @return a PDF
     */
    public static byte[] pdf(FittingChart chart, SheetPaper paper) {
        Pattern pattern = chart.fit().worked().original();
        String whom = pattern.name()
                + (pattern.size().isBlank() ? "" : ", size " + pattern.size()) + ", for "
                + chart.fit().body().label();
        PdfBook book = PdfBook.titled(
                "Fitting chart: " + whom, "Body, pattern, need, decision and result, measure by measure");
        SheetFlow flow = SheetFlow.lying(book, paper, "Fitting chart: " + whom, CAUTIONS);
        ChartSheet sheet = new ChartSheet(chart, flow);
        sheet.opening(whom);
        sheet.table();
        sheet.below();
        return flow.finished();
    }

    private void opening(String whom) {
        flow.paragraph("Fitting chart", TITLE, 1);
        flow.paragraph(MeasureWords.capital(whom) + ".", TEXT, 1);
        if (fit.schematic()) {
            flow.paragraph(
                    "Paper pattern, not in the computer: the flat pattern's figures are those that were typed; what it"
                            + " measures after altering is for you to measure.",
                    TEXT.heavy(),
                    1);
        }
        if (!fit.report().holds()) {
            flow.paragraph(ProofWords.headline(fit.report()), HEADING, 1);
        }
        flow.down(1);
    }

    private void table() {
        List<List<Cell>> rows = new ArrayList<>();
        for (ChartLine line : chart.lines()) {
            rows.add(row(line));
        }
        new SheetTable(flow, COLUMNS, flow.width()).set(rows);
        if (rows.isEmpty()) {
            flow.paragraph("Body and pattern have no measure in common.", TEXT, 1);
        }
        flow.down(4);
    }

    private List<Cell> row(ChartLine line) {
        Need need = line.need();
        boolean altered = need.decision().isAltered();
        String error = line.isNearTheTapesError() ? "tape \u00b1" + show.show(need.measuringErrorMm()) : "";
        String verdict = MeasureWords.capital(line.verdict()) + decidedBy(need);
        return List.of(
                Cell.of(line.label(), need.measure().term()).heavier(),
                Cell.of(show.show(need.body().mm()) + footnote(line), sides(line)),
                compared(need.tableMm(), need.method() == Method.TABLE),
                compared(need.flatMm(), need.method() == Method.FLAT),
                Cell.of(show.show(need.easeMm()), easeSource(line)),
                Cell.of(shown(need.minimumEaseMm())),
                Cell.of(show.showSigned(need.needMm()), error),
                Cell.of(verdict, Unbroken.lengths(need.decision().reason())).heavier(),
                Cell.of(altered ? show.showSigned(need.decision().amountMm()) : ""),
                line.change()
                        .map(change -> Cell.of(ruler.showSigned(change.perEdgeMm()), change.sharedOver()))
                        .orElse(Cell.of("")),
                after(line));
    }

    private String decidedBy(Need need) {
        if (!need.decision().overruled()) {
            return "";
        }
        return fit.choices().isStanding(need.measure()) ? " (standing)" : " (your decision)";
    }

    private Cell after(ChartLine line) {
        OptionalDouble target = line.need().targetMm();
        if (fit.schematic() && target.isPresent()) {
            return Cell.of(show.show(target.getAsDouble()), "to be, measure it");
        }
        return Cell.of(shown(line.afterMm()), moved(line));
    }

    /** A measure that was left alone may be moved by the others. */
    private String moved(ChartLine line) {
        OptionalDouble before = line.need().flatMm();
        if (line.need().decision().isAltered()
                || before.isEmpty()
                || line.afterMm().isEmpty()) {
            return "";
        }
        double by = line.afterMm().getAsDouble() - before.getAsDouble();
        return ruler.isHidden(by) ? "" : ruler.showSigned(by) + " by the other changes";
    }

    private Cell compared(OptionalDouble mm, boolean method) {
        return mm.isPresent() ? Cell.of(show.show(mm.getAsDouble()), method ? "compared" : "") : Cell.of("");
    }

    private String shown(OptionalDouble mm) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "";
    }

    /** Both sides, where the body is not alike on both. */
    private String sides(ChartLine line) {
        return line.sides()
                .map(sides -> "left " + show.show(sides.leftMm()) + ", right " + show.show(sides.rightMm()))
                .map(Unbroken::lengths)
                .orElse("");
    }

    /** The table has room for a few words only; a publication is named below. */
    private String easeSource(ChartLine line) {
        String source = line.need().easeSource();
        if (!EaseWords.isMarked(source)) {
            return source;
        }
        footnotes.add(line.label() + ": the ease is from " + new EaseWords(show).full(source) + ".");
        return EaseWords.brief(source) + " [" + footnotes.size() + "]";
    }

    private String footnote(ChartLine line) {
        if (line.isTaped() && line.need().body().note().isEmpty()) {
            return "";
        }
        String note = line.need().body().note();
        footnotes.add(
                line.label() + ": " + MeasureWords.origin(line.need().body().origin())
                        + (note.isEmpty() ? "." : ", " + note + (note.endsWith(".") ? "" : ".")));
        return " [" + footnotes.size() + "]";
    }

    private void below() {
        for (int i = 0; i < footnotes.size(); i++) {
            flow.paragraph("[" + (i + 1) + "] " + Unbroken.lengths(footnotes.get(i)), TEXT, 0.5);
        }
        chart.size().map(SizeChoice::reason).ifPresent(reason -> section("Size", List.of(reason)));
        if (!chart.sleeve().isEmpty()) {
            new SleeveTable(flow, show, ruler).set(chart.sleeve());
        }
        section(
                "Look at again",
                chart.findings().stream().map(ChartSheet::sentence).toList());
        section("Ends of seams that came apart", LevelWords.of(fit));
        List<String> proofs = new ArrayList<>();
        proofs.add(ProofWords.headline(fit.report()));
        if (fit.schematic()) {
            proofs.add("They are measured on the schematic pieces: walk the seams of your paper pattern yourself.");
        }
        proofs.addAll(ProofWords.failures(fit.report()));
        proofs.addAll(ProofWords.kinds(fit.report()));
        section("Proofs", proofs);
    }

    private static String sentence(Finding finding) {
        return MeasureWords.capital(finding.place()) + ": " + finding.sentence();
    }

    private void section(String heading, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        flow.down(2.5);
        flow.need(14);
        flow.paragraph(heading, HEADING, 0.8);
        for (String line : lines) {
            flow.paragraph(Unbroken.lengths(line), TEXT, 0.5);
        }
    }
}
