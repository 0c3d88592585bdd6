package trueseam.output.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The shape of report.json: one record for each object of the file, its components in the order of the keys.
 *
 * @param format always {@code trueseam fit report}
 * @param version of this shape: raised when a key changes its meaning or goes away
 * @param made the day of the fit, such as {@code 2026-03-09}
 * @param worn whether the result was worn, or its trial garment tried on, and found right
 * @param pattern the pattern
 * @param schematic whether the pieces only show the steps
 * @param garment the kind of garment
 * @param body the person
 * @param size the size that was compared with
 * @param sizeChoice why this size
 * @param choices what was chosen
 * @param alterations alterations that were asked for by name
 * @param needs the fitting chart
 * @param changes how the amounts are shared
 * @param amountsUsedMm what each alteration was given so that the measures come out right
 * @param flat every flat measure before and after, with its working
 * @param sleeve what the sleeve costs, the way taken first
 * @param chapters what was done, step by step
 * @param levels ends of seams before truing
 * @param holds whether every proof holds
 * @param proofs every proof
 * @param findings what the dressmaker should know
 */
record ReportFigures(
        String format,
        int version,
        Optional<String> made,
        boolean worn,
        PatternFigure pattern,
        boolean schematic,
        String garment,
        BodyFigure body,
        Optional<SizeFigure> size,
        Optional<SizeChoiceFigure> sizeChoice,
        ChoicesFigure choices,
        List<AlterationFigure> alterations,
        List<NeedFigure> needs,
        List<ChangeFigure> changes,
        List<AmountFigure> amountsUsedMm,
        List<FlatFigure> flat,
        List<SleeveFigure> sleeve,
        List<ChapterFigure> chapters,
        List<LevelFigure> levels,
        boolean holds,
        List<ProofFigure> proofs,
        List<FindingFigure> findings) {

    static final String FORMAT = "trueseam fit report";
    static final int VERSION = 1;

    record PatternFigure(String name, String size, String sizeTable, String source, List<String> pieces) {}

    record BodyFigure(String label, List<BodyMeasureFigure> measures) {}

    record BodyMeasureFigure(
            String measure, String label, double mm, double spreadMm, int readings, String origin, String note) {}

    record SizeFigure(String size, List<AmountFigure> measuresMm) {}

    record AmountFigure(String measure, double mm) {}

    record SizeChoiceFigure(
            String table, String size, String by, double bodyMm, String column, double tableMm, String reason) {}

    record ChoicesFigure(
            String method,
            String rule,
            double looseness,
            String hem,
            String cap,
            String reach,
            List<OverruleFigure> overrules,
            List<AmountFigure> easeMm,
            String unit) {}

    /** {@code mm} is unknown where the amount is found from the measure; {@code standing} where earlier patterns asked for it. */
    record AlterationFigure(String name, String way, OptionalDouble mm, String side, boolean standing) {}

    record OverruleFigure(String measure, String decision, OptionalDouble mm) {}

    record NeedFigure(
            String measure,
            String label,
            double bodyMm,
            String origin,
            OptionalDouble tableMm,
            OptionalDouble flatMm,
            double easeMm,
            OptionalDouble leastEaseMm,
            String easeSource,
            String method,
            double needMm,
            double measuringErrorMm,
            double leaveMm,
            String decision,
            boolean overruled,
            String reason,
            double amountMm,
            OptionalDouble targetMm,
            OptionalDouble afterMm) {}

    record ChangeFigure(String measure, double totalMm, int edges, String sharedOver, double perEdgeMm) {}

    record FlatFigure(
            String measure, double beforeMm, double afterMm, List<PartFigure> before, List<PartFigure> after) {}

    record PartFigure(String piece, String what, double mm, int times) {}

    record SleeveFigure(String cap, boolean taken, SleeveMeasures before, SleeveMeasures after) {}

    record SleeveMeasures(
            double capHeightMm, double capSeamMm, double armholeMm, double capEaseMm, double underarmSeamMm) {}

    record ChapterFigure(String title, String piece, boolean truing, List<StepFigures.Figure> steps) {}

    record LevelFigure(
            String seam,
            String end,
            String firstPiece,
            String firstEdge,
            double firstUpMm,
            String secondPiece,
            String secondEdge,
            double secondUpMm,
            double apartMm) {}

    record ProofFigure(
            String kind, String where, double value, double bound, String unit, boolean holds, String remark) {}

    record FindingFigure(String severity, String place, String sentence) {}
}
