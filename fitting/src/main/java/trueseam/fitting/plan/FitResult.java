package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.size.SizeRow;

/**
 * A fit from beginning to end: who and what, the chart, the plan, the altered pattern, the proof.
 *
 * @param body the body
 * @param kind the garment
 * @param size the size that the pattern was taken in, with its body measures, if known
 * @param choices what the dressmaker chose
 * @param needs the fitting chart
 * @param changes what the plan changes, in the order of work, with the shares
 * @param amounts what each alteration was given so that the measures come out right
 * @param worked the pattern before and after
 * @param report the proofs
 * @param findings what the dressmaker should know
 * @param schematic whether there is no digital pattern: the pieces worked on are drafted ones that only show the steps, and the
 *     flat measures of the chart were typed
 */
public record FitResult(
        Body body,
        GarmentKind kind,
        Optional<SizeRow> size,
        FitChoices choices,
        List<Need> needs,
        List<Change> changes,
        Amounts amounts,
        WorkedPattern worked,
        FitReport report,
        List<Finding> findings,
        boolean schematic) {

    // Immutable.
    public FitResult {
        needs = List.copyOf(needs);
        changes = List.copyOf(changes);
        findings = List.copyOf(findings);
    }

    /**
     * The same fit with more to say to the dressmaker.
     *
     * @param more findings, put after those of the fit
     * @return the fit
     */
    public FitResult saying(List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new FitResult(body, kind, size, choices, needs, changes, amounts, worked, report, all, schematic);
    }
}
