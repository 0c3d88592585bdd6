package trueseam.output.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.truing.LevelShift;
import trueseam.fitting.work.Chapter;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.Side;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.FittingChart;
import trueseam.output.chart.SleeveFigures;
import trueseam.output.steps.StepWords;
import trueseam.output.words.MeasureWords;

/** Turns a fit into the figures of report.json. */
final class Reporting {

    private final FittingChart chart;
    private final FitResult fit;

    private final Occasion occasion;

    private Reporting(FittingChart chart, Occasion occasion) {
        this.chart = chart;
        this.occasion = occasion;
        this.fit = chart.fit();
    }

    static ReportFigures of(FittingChart chart, Occasion occasion) {
        return new Reporting(chart, occasion).figures();
    }

    private ReportFigures figures() {
        return new ReportFigures(
                ReportFigures.FORMAT,
                ReportFigures.VERSION,
                occasion.made().map(LocalDate::toString),
                occasion.worn(),
                pattern(fit.worked().original()),
                fit.schematic(),
                word(fit.kind()),
                body(fit.body()),
                fit.size().map(row -> new ReportFigures.SizeFigure(row.size(), amounts(row.mm()))),
                chart.size().map(Reporting::sizeChoice),
                choices(fit.choices()),
                fit.choices().requests().stream().map(this::alteration).toList(),
                chart.lines().stream().map(this::need).toList(),
                fit.changes().stream()
                        .map(c -> new ReportFigures.ChangeFigure(
                                c.measure().term(), c.totalMm(), c.edges(), c.sharedOver(), c.perEdgeMm()))
                        .toList(),
                amounts(fit.amounts().mm()),
                flat(),
                sleeve(),
                fit.worked().chapters().stream().map(this::chapter).toList(),
                fit.worked().levels().stream().map(Reporting::level).toList(),
                fit.report().holds(),
                fit.report().proofs().stream()
                        .map(p -> new ReportFigures.ProofFigure(
                                word(p.kind()), p.where(), p.value(), p.bound(), p.unit(), p.holds(), p.remark()))
                        .toList(),
                chart.findings().stream()
                        .map(f -> new ReportFigures.FindingFigure(word(f.severity()), f.place(), f.sentence()))
                        .toList());
    }

    /** A constant as a word of the file. */
    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static ReportFigures.PatternFigure pattern(Pattern pattern) {
        return new ReportFigures.PatternFigure(
                pattern.name(),
                pattern.size(),
                pattern.sizeTable(),
                pattern.source(),
                pattern.pieces().stream().map(Piece::name).toList());
    }

    private static ReportFigures.BodyFigure body(Body body) {
        List<ReportFigures.BodyMeasureFigure> measures = new ArrayList<>();
        for (Measure measure : body.measures()) {
            BodyValue value = body.value(measure).orElseThrow();
            measures.add(new ReportFigures.BodyMeasureFigure(
                    measure.term(),
                    measure.workroomLabel(),
                    value.mm(),
                    value.spreadMm(),
                    value.readings(),
                    MeasureWords.origin(value.origin()),
                    value.note()));
        }
        return new ReportFigures.BodyFigure(body.label(), measures);
    }

    private static List<ReportFigures.AmountFigure> amounts(Map<Measure, Double> mm) {
        List<ReportFigures.AmountFigure> amounts = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (mm.containsKey(measure)) {
                amounts.add(new ReportFigures.AmountFigure(measure.term(), mm.get(measure)));
            }
        }
        return amounts;
    }

    private static ReportFigures.SizeChoiceFigure sizeChoice(SizeChoice choice) {
        return new ReportFigures.SizeChoiceFigure(
                choice.table(),
                choice.row().size(),
                choice.by().term(),
                choice.bodyMm(),
                choice.column().term(),
                choice.tableMm(),
                choice.reason());
    }

    private static ReportFigures.ChoicesFigure choices(FitChoices choices) {
        List<ReportFigures.OverruleFigure> overrules = new ArrayList<>();
        choices.overrules()
                .forEach((measure, overrule) -> overrule(measure, overrule).ifPresent(overrules::add));
        return new ReportFigures.ChoicesFigure(
                choices.method().map(Reporting::word).orElse("as known"),
                word(choices.rule()),
                choices.looseness(),
                word(choices.hem()),
                word(choices.cap()),
                word(choices.reach()),
                overrules,
                amounts(choices.easeMm()),
                choices.show().unit().sign());
    }

    private static Optional<ReportFigures.OverruleFigure> overrule(Measure measure, Overrule overrule) {
        if (overrule instanceof Overrule.Settled settled) {
            // After a sitting every measure is settled: what a rule settled is no overrule, what was pinned is one.
            return settled.isPinned()
                    ? Optional.of(new ReportFigures.OverruleFigure(
                            measure.term(),
                            "pinned",
                            OptionalDouble.of(settled.decision().amountMm())))
                    : settled.kept().flatMap(kept -> overrule(measure, kept));
        }
        if (overrule instanceof Overrule.Amount amount) {
            return Optional.of(
                    new ReportFigures.OverruleFigure(measure.term(), "amount", OptionalDouble.of(amount.mm())));
        }
        if (overrule instanceof Overrule.Standing standing) {
            return Optional.of(new ReportFigures.OverruleFigure(measure.term(), "standing", standing.mm()));
        }
        String word = overrule instanceof Overrule.Leave ? "leave" : "alter";
        return Optional.of(new ReportFigures.OverruleFigure(measure.term(), word, OptionalDouble.empty()));
    }

    private ReportFigures.AlterationFigure alteration(Request request) {
        return new ReportFigures.AlterationFigure(
                request.entry().name(),
                request.variant().name(),
                request.mm(),
                word(request.side().orElse(Side.BOTH)),
                occasion.standing().contains(request));
    }

    private ReportFigures.NeedFigure need(ChartLine line) {
        Need need = line.need();
        return new ReportFigures.NeedFigure(
                need.measure().term(),
                need.measure().workroomLabel(),
                need.body().mm(),
                MeasureWords.origin(need.body().origin()),
                need.tableMm(),
                need.flatMm(),
                need.easeMm(),
                need.minimumEaseMm(),
                need.easeSource(),
                word(need.method()),
                need.needMm(),
                need.measuringErrorMm(),
                fit.choices().rule().leaveMm(need.measure(), fit.choices().looseness()),
                line.verdict(),
                need.decision().overruled(),
                need.decision().reason(),
                need.decision().amountMm(),
                need.targetMm(),
                line.afterMm());
    }

    private List<ReportFigures.FlatFigure> flat() {
        List<ReportFigures.FlatFigure> all = new ArrayList<>();
        for (FlatMeasure before : FlatPattern.all(fit.worked().original())) {
            Optional<FlatMeasure> after = FlatPattern.measure(fit.worked().altered(), before.measure());
            after.ifPresent(now -> all.add(new ReportFigures.FlatFigure(
                    before.measure().term(), before.mm(), now.mm(), parts(before), parts(now))));
        }
        return all;
    }

    private static List<ReportFigures.PartFigure> parts(FlatMeasure flat) {
        return flat.parts().stream()
                .map(p -> new ReportFigures.PartFigure(p.piece(), p.what(), p.mm(), p.times()))
                .toList();
    }

    /** Where no sleeve girth changes, cap and armhole may still have changed: then before and after stand alone. */
    private List<ReportFigures.SleeveFigure> sleeve() {
        List<ReportFigures.SleeveFigure> all = new ArrayList<>();
        chart.sleeve()
                .forEach(cost -> all.add(new ReportFigures.SleeveFigure(
                        word(cost.cap()), cost.taken(), measures(cost.before()), measures(cost.after()))));
        if (all.isEmpty()) {
            SleeveFigures.of(fit.worked().original())
                    .flatMap(before -> SleeveFigures.of(fit.worked().altered())
                            .map(after -> new ReportFigures.SleeveFigure(
                                    word(fit.choices().cap()), true, measures(before), measures(after))))
                    .ifPresent(all::add);
        }
        return all;
    }

    private static ReportFigures.SleeveMeasures measures(SleeveFigures figures) {
        return new ReportFigures.SleeveMeasures(
                figures.capHeightMm(),
                figures.capSeamMm(),
                figures.armholeMm(),
                figures.capEaseMm(),
                figures.underarmSeamMm());
    }

    private ReportFigures.ChapterFigure chapter(Chapter chapter) {
        List<Frame> frames = Tissue.play(chapter.before(), chapter.steps());
        List<String> words =
                StepWords.of(chapter.before(), chapter.steps(), fit.choices().show());
        return new ReportFigures.ChapterFigure(
                chapter.title(), chapter.before().name(), chapter.truing(), StepFigures.of(frames, words));
    }

    private static ReportFigures.LevelFigure level(LevelShift shift) {
        return new ReportFigures.LevelFigure(
                shift.seam(),
                shift.end(),
                shift.first().piece(),
                shift.first().edge(),
                shift.firstMm(),
                shift.second().piece(),
                shift.second().edge(),
                shift.secondMm(),
                shift.apartMm());
    }
}
