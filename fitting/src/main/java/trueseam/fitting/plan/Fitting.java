package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.PanelGirth;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.alteration.TwoPieceSleeveGirth;
import trueseam.fitting.compare.Comparison;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.compare.Decision;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.EarlierRounds;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Sides;
import trueseam.garment.size.SizeRow;

/**
 * Fits a pattern to a body: compares, decides, shares, works the tissue, trues, proves.
 *
 * <p>The amounts are first the wanted changes; the altered pattern is measured again, and the amounts are corrected by what it is
 * off ({@link Solving}), until every changed measure is at its target. Changes that do part of each other's work (a deeper
 * crotch is also a longer crotch seam) are so counted once.
 */
public final class Fitting {

    private final Pattern pattern;
    private final Body body;
    private final Optional<SizeRow> size;
    private final FitChoices choices;
    private final GarmentKind kind;
    private final Set<PieceKind> inParts;
    private final Map<Measure, Double> drawn = new EnumMap<>(Measure.class);
    private final Optional<Map<Measure, Double>> typed;
    private final List<Finding> findings = new ArrayList<>();
    private final Solving solving;

    Fitting(
            Pattern pattern,
            Body body,
            Optional<SizeRow> size,
            Optional<Map<Measure, Double>> typed,
            FitChoices choices,
            Optional<HeldFit> near) {
        // A change on one side only: the pieces can no longer be cut double.
        boolean oneSided =
                choices.requests().stream().anyMatch(request -> request.side().isPresent());
        this.pattern = oneSided ? Sides.split(pattern) : pattern;
        this.typed = typed;
        this.body = body;
        this.size = size;
        this.choices = choices;
        this.kind = kindOf(pattern);
        this.inParts = Repertoire.inParts(pattern);
        for (Measure measure : Coverage.measuresOf(kind, inParts)) {
            FlatPattern.measure(this.pattern, measure).ifPresent(m -> drawn.put(measure, m.mm()));
        }
        this.solving = new Solving(this.pattern, choices, kind, drawn, near);
    }

    /**
     * Fits a pattern.
     *
     * @param pattern the pattern in the chosen size
     * @param body the body
     * @param size the row of the size table that the pattern was taken in, if known
     * @param choices what the dressmaker chose
     * @return the whole fit, proven or marked as failing
     * @throws IllegalArgumentException of this room or the tissue's if the pattern cannot take a change at all
     */
    public static FitResult fit(Pattern pattern, Body body, Optional<SizeRow> size, FitChoices choices) {
        return new Fitting(pattern, body, size, Optional.empty(), choices, Optional.empty()).result();
    }

    /**
     * Fits a paper pattern that is not in the computer: the chart and the amounts are reckoned from the typed flat measures, or
     * from the size alone, and the steps are shown on schematic pieces.
     *
     * @param schematic drafted pieces of the same kind of garment, to show the steps on
     * @param body the body
     * @param size the row of the size table, if known
     * @param typedMm what the tape read on the paper, mm, by measure; may be empty if the size is known
     * @param choices what the dressmaker chose
     * @return the whole fit, on schematic pieces
     */
    public static FitResult onPaper(
            Pattern schematic, Body body, Optional<SizeRow> size, Map<Measure, Double> typedMm, FitChoices choices) {
        return new Fitting(schematic, body, size, Optional.of(typedMm), choices, Optional.empty()).result();
    }

    /**
     * The fitting chart alone: what would be decided, before anything is altered.
     *
     * @param pattern the pattern, or schematic pieces of the same kind of garment
     * @param body the body
     * @param size the row of the size table, if known
     * @param typedMm what the tape read on a paper pattern, mm, by measure; absent where the pattern itself is measured
     * @param choices what the dressmaker chose
     * @return the chart
     */
    public static List<Need> chart(
            Pattern pattern,
            Body body,
            Optional<SizeRow> size,
            Optional<Map<Measure, Double>> typedMm,
            FitChoices choices) {
        return new Fitting(pattern, body, size, typedMm, choices, Optional.empty()).chart();
    }

    /**
     * What garment a pattern makes.
     *
     * @param pattern the pattern
     * @return by its pieces
     * @throws UnknownGarmentException if it has no piece that the catalogue alters
     */
    public static GarmentKind kindOf(Pattern pattern) {
        boolean skirt = false;
        boolean trousers = false;
        boolean bodice = false;
        for (var piece : pattern.pieces()) {
            PieceKind kind = piece.kind();
            if (kind.isDress()) {
                return GarmentKind.DRESS;
            }
            bodice |= kind.isUpper() || kind.isSleeve();
            skirt |= kind.isSkirt();
            trousers |= kind.isTrouser();
        }
        if (bodice) {
            return GarmentKind.BODICE;
        }
        if (skirt) {
            return GarmentKind.SKIRT;
        }
        if (trousers) {
            return GarmentKind.TROUSERS;
        }
        throw new UnknownGarmentException(pattern.name());
    }

    private Sharing.Edges shares() {
        return new Sharing.Edges(
                PanelGirth.isPanelled(pattern)
                        ? PanelGirth.cutEdges(pattern, choices.panels())
                        : SideGirth.cutEdges(pattern),
                inParts.contains(PieceKind.UNDER_SLEEVE) ? TwoPieceSleeveGirth.cutEdges(choices.sleeveSeams()) : 2);
    }

    private List<Need> chart() {
        // What the schematic pieces measure says nothing of the paper: only what was typed counts.
        Map<Measure, Double> flat = typed.orElse(drawn);
        Map<Measure, Double> stated = typed.isPresent() ? Map.of() : pattern.easeMm();
        return countedOnce(new Comparison(body, kind, inParts, size, flat, stated, choices).needs());
    }

    EarlierRounds rounds() {
        return solving.rounds();
    }

    Corrections corrections() {
        return solving.corrections();
    }

    /** Where the plan fails because of something that was asked for by name and fails by itself, that is refused. */
    private Attempts.Attempt proven(List<Need> chart) {
        Attempts.Attempt attempt;
        try {
            attempt = new Attempts(solving, choices, kind, inParts, typed.isPresent()).proven(chart);
        } catch (IllegalArgumentException refused) {
            requireTakenAlone();
            throw refused;
        }
        if (!attempt.report().holds()) {
            requireTakenAlone();
        }
        return attempt;
    }

    private void requireTakenAlone() {
        WorkOrder.named(choices).forEach(applied -> LargeAmounts.requireTakenAlone(pattern, applied, choices.show()));
    }

    FitResult result() {
        WorkOrder.named(choices).forEach(applied -> LargeAmounts.requireTaken(pattern, applied, choices.show()));
        Attempts.Attempt attempt = proven(chart());
        List<Need> needs = attempt.needs();
        Solving.Solved solved = attempt.solved();
        List<Change> changes = Sharing.changes(needs, shares(), kind);
        findings.addAll(Sharing.warnings(changes, choices.show()));
        if (typed.isEmpty()) {
            findings.addAll(AlsoMoved.findings(needs, drawn, solved.worked().altered(), choices.show()));
        }
        CupAdvice.of(pattern, body, needs, choices).ifPresent(findings::add);
        List<Alteration> plan = solving.order(solved.amounts());
        findings.addAll(LargeAmounts.findings(plan, choices.show()));
        if (!choices.requests().isEmpty()) {
            findings.addAll(Interplay.findings(pattern, plan, solving.targets(needs), choices.show()));
        }
        return new FitResult(
                body,
                kind,
                size,
                choices,
                needs,
                changes,
                solved.amounts(),
                solved.worked(),
                attempt.report(),
                findings,
                typed.isPresent());
    }

    /**
     * A change of the crotch depth by N is also a change of N in the front and in the back crotch length (common practice): their
     * needs are decided on what is left.
     */
    private List<Need> countedOnce(List<Need> needs) {
        double depth = 0;
        for (Need need : needs) {
            if (need.measure() == Measure.BODY_RISE) {
                depth = need.decision().amountMm();
            }
        }
        if (depth == 0) {
            return needs;
        }
        List<Need> all = new ArrayList<>();
        for (Need need : needs) {
            boolean crotch =
                    need.measure() == Measure.FRONT_CROTCH_LENGTH || need.measure() == Measure.BACK_CROTCH_LENGTH;
            all.add(crotch && !need.decision().overruled() ? afterDepth(need, depth) : need);
        }
        return all;
    }

    private Need afterDepth(Need need, double depth) {
        double left = need.needMm() - depth;
        String deeper = choices.show().showSigned(depth) + " comes with the crotch depth; what is left, "
                + choices.show().showSigned(left) + ", ";
        if (Math.abs(left) <= choices.rule().leaveMm(need.measure(), choices.looseness())) {
            return need.with(new Decision(Verdict.LEAVE, 0, deeper + "is left alone.", false));
        }
        // The target counts from the flat pattern before any change, so the amount here is the whole difference.
        return need.with(new Decision(Verdict.ALTER, need.needMm(), deeper + "is altered.", false));
    }
}
