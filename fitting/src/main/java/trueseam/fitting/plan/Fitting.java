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
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.EarlierRounds;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.flat.FlatMeasure;
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
 * off ({@link Corrections}), until every changed measure is at its target. Changes that do part of each other's work (a deeper
 * crotch is also a longer crotch seam) are so counted once.
 */
public final class Fitting {

    /** A measure nearer to its target than this needs no correction: a fifth of what the proof allows. */
    private static final double NEAR_MM = 0.02;

    private static final int ROUNDS = 15;

    /** Learned corrections that are not there after so many rounds hop to and fro across a limit of truing; plain ones creep up. */
    private static final int LEARNED_ROUNDS = 8;

    private static final String TOO_LARGE =
            "that is more than this alteration is trusted with; take the next size there, open the piece inside, or decide it yourself.";

    /** How often a measure that was left alone may be taken up because another change moved it. */
    private static final int PROMOTIONS = 3;

    private final Pattern pattern;
    private final Body body;
    private final Optional<SizeRow> size;
    private final FitChoices choices;
    private final GarmentKind kind;
    private final Set<PieceKind> inParts;
    private final Map<Measure, Double> drawn = new EnumMap<>(Measure.class);
    private final Optional<Map<Measure, Double>> typed;
    private final Optional<HeldFit> near;
    private final List<Finding> findings = new ArrayList<>();
    private final EarlierRounds rounds;
    private final Corrections corrections;

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
        this.near = near;
        this.rounds = near.map(held -> new EarlierRounds(held.rounds())).orElseGet(EarlierRounds::new);
        this.corrections = near.map(held -> new Corrections(held.corrections())).orElseGet(Corrections::new);
        this.body = body;
        this.size = size;
        this.choices = choices;
        this.kind = kindOf(pattern);
        this.inParts = Repertoire.inParts(pattern);
        for (Measure measure : Coverage.measuresOf(kind)) {
            FlatPattern.measure(this.pattern, measure).ifPresent(m -> drawn.put(measure, m.mm()));
        }
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
                inParts.contains(PieceKind.SLEEVE) ? TwoPieceSleeveGirth.cutEdges(choices.sleeveSeams()) : 2);
    }

    private List<Need> chart() {
        // What the schematic pieces measure says nothing of the paper: only what was typed counts.
        Map<Measure, Double> flat = typed.orElse(drawn);
        Map<Measure, Double> stated = typed.isPresent() ? Map.of() : pattern.easeMm();
        return countedOnce(new Comparison(body, kind, inParts, size, flat, stated, choices).needs());
    }

    /** A worked plan and its proofs. */
    private record Attempt(List<Need> needs, Solved solved, FitReport report) {}

    private Attempt attempt(List<Need> chart) {
        List<Need> needs = chart;
        Solved solved = solve(needs);
        for (int i = 0; i < PROMOTIONS; i++) {
            List<Need> promoted = promoted(needs, solved);
            if (promoted.equals(needs)) {
                break;
            }
            needs = promoted;
            solved = solve(needs, solved);
        }
        return new Attempt(needs, solved, Prover.prove(solved.worked, targets(needs), solved.worked.capEaseAsked()));
    }

    /**
     * The whole plan if it can be carried out and proved; else the plan without as few as possible of the needs that may be left for the
     * trial garment.
     */
    private Attempt provenAttempt(List<Need> chart) {
        List<Need> needs = LeftForTrial.without(
                chart,
                LeftForTrial.tooLarge(LeftForTrial.candidates(chart, kind, choices), start(chart), kind),
                TOO_LARGE);
        Optional<Attempt> whole = Optional.empty();
        Optional<IllegalArgumentException> refused = Optional.empty();
        String why;
        try {
            whole = Optional.of(attempt(needs));
            if (whole.get().report().holds()) {
                return modest(needs, whole.get());
            }
            why = "together with the other changes it cannot be proved ("
                    + whole.get().report().failures().get(0).sentence() + ")";
        } catch (IllegalArgumentException e) {
            refused = Optional.of(e);
            why = String.valueOf(e.getMessage());
        }
        List<Measure> candidates =
                LeftForTrial.candidates(whole.map(Attempt::needs).orElse(needs), kind, choices);
        List<Set<Measure>> choice = new ArrayList<>();
        candidates.forEach(measure -> choice.add(Set.of(measure)));
        choice.add(Set.copyOf(candidates));
        for (Set<Measure> left : candidates.isEmpty() ? List.<Set<Measure>>of() : choice) {
            Optional<Attempt> without = without(needs, left, why);
            if (without.isPresent()
                    && (without.get().report().holds() || (whole.isEmpty() && left.size() == candidates.size()))) {
                return without.get();
            }
        }
        if (whole.isEmpty() && choices.requests().isEmpty()) {
            Optional<Attempt> some = someOf(needs, why);
            if (some.isPresent()) {
                return some.get();
            }
        }
        return whole.orElseThrow(refused::orElseThrow);
    }

    /**
     * A plan that the pieces cannot take as a whole is carried out without one of the needs that the rule decided, or without two: a
     * pattern with a trial garment to come helps more than none.
     */
    private Optional<Attempt> someOf(List<Need> needs, String why) {
        Optional<Attempt> any = Optional.empty();
        for (Set<Measure> left : LeftForTrial.onesAndPairs(needs)) {
            Optional<Attempt> without = without(needs, left, why);
            if (without.filter(attempt -> attempt.report().holds()).isPresent()) {
                return without;
            }
            any = any.or(() -> without);
        }
        return any;
    }

    /** What other changes made so large that no rule may ask for it is left for the trial garment too. */
    private Attempt modest(List<Need> needs, Attempt proven) {
        Set<Measure> large = LeftForTrial.tooLarge(
                LeftForTrial.candidates(proven.needs(), kind, choices), proven.solved().amounts, kind);
        return large.isEmpty()
                ? proven
                : without(needs, large, TOO_LARGE)
                        .filter(attempt -> attempt.report().holds())
                        .orElse(proven);
    }

    private Optional<Attempt> without(List<Need> needs, Set<Measure> left, String why) {
        try {
            corrections.newTargets();
            return Optional.of(attempt(LeftForTrial.without(needs, left, why)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    EarlierRounds rounds() {
        return rounds;
    }

    Corrections corrections() {
        return corrections;
    }

    FitResult result() {
        WorkOrder.named(choices).forEach(applied -> LargeAmounts.requireTaken(pattern, applied, choices.show()));
        Attempt attempt = provenAttempt(chart());
        List<Need> needs = attempt.needs();
        Solved solved = attempt.solved();
        List<Change> changes = Sharing.changes(needs, shares(), kind);
        findings.addAll(Sharing.warnings(changes, choices.show()));
        if (typed.isEmpty()) {
            findings.addAll(AlsoMoved.findings(needs, drawn, solved.worked.altered(), choices.show()));
        }
        CupAdvice.of(pattern, body, needs, choices).ifPresent(findings::add);
        List<Alteration> plan = order(solved.amounts);
        findings.addAll(LargeAmounts.findings(plan, choices.show()));
        if (!choices.requests().isEmpty()) {
            findings.addAll(Interplay.findings(pattern, plan, targets(needs), choices.show()));
        }
        return new FitResult(
                body,
                kind,
                size,
                choices,
                needs,
                changes,
                solved.amounts,
                solved.worked,
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

    private Map<Measure, Double> targets(List<Need> needs) {
        Map<Measure, Double> targets = new EnumMap<>(Measure.class);
        for (Need need : needs) {
            Double before = drawn.get(need.measure());
            if (need.decision().isAltered() && before != null) {
                targets.put(need.measure(), before + need.decision().amountMm());
            }
        }
        return targets;
    }

    private record Solved(Amounts amounts, WorkedPattern worked) {}

    private Solved solve(List<Need> needs) {
        return solve(needs, near.flatMap(held -> begun(needs, held.fit())).orElseGet(() -> begun(start(needs))));
    }

    private Solved begun(Amounts amounts) {
        return new Solved(amounts, work(amounts));
    }

    /** From the amounts that came out there, by what was learned there; nothing if the pattern cannot take that. */
    private Optional<Solved> begun(List<Need> needs, FitResult fit) {
        Amounts amounts = start(needs);
        Amounts was = start(fit.needs());
        Map<Measure, Double> farther = new EnumMap<>(Measure.class);
        for (Measure measure : amounts.mm().keySet()) {
            if (was.has(measure) && fit.amounts().has(measure)) {
                farther.put(measure, amounts.of(measure) - was.of(measure));
            }
        }
        for (Map.Entry<Measure, Double> step : corrections.step(farther, 0).entrySet()) {
            Measure measure = step.getKey();
            amounts = amounts.plus(measure, fit.amounts().of(measure) + step.getValue() - amounts.of(measure));
        }
        try {
            return Optional.of(begun(amounts));
        } catch (IllegalArgumentException tooFar) {
            return Optional.empty();
        }
    }

    private Solved solve(List<Need> needs, Solved before) {
        Map<Measure, Double> targets = targets(needs);
        corrections.newTargets();
        if (!corrections.arePlain()) {
            try {
                Solved solved = corrected(targets, before, LEARNED_ROUNDS);
                if (isNear(off(targets, solved.worked.altered()))) {
                    return solved;
                }
            } catch (IllegalArgumentException e) {
                // A learned step reached too far for the pattern: only what a plain one asks too much of it is refused.
            }
            corrections.stayPlain();
        }
        return corrected(targets, begun(start(needs)), ROUNDS);
    }

    private Solved corrected(Map<Measure, Double> targets, Solved before, int most) {
        Solved now = before;
        for (int round = 0; round < most; round++) {
            Map<Measure, Double> off = off(targets, now.worked.altered());
            if (isNear(off)) {
                break;
            }
            Amounts amounts = now.amounts;
            for (Map.Entry<Measure, Double> one : corrections.next(off, NEAR_MM).entrySet()) {
                amounts = amounts.plus(one.getKey(), one.getValue());
            }
            now = new Solved(amounts, work(amounts));
        }
        return now;
    }

    private static boolean isNear(Map<Measure, Double> off) {
        return off.values().stream().allMatch(mm -> Math.abs(mm) <= NEAR_MM);
    }

    private static Map<Measure, Double> off(Map<Measure, Double> targets, Pattern altered) {
        Map<Measure, Double> off = new EnumMap<>(Measure.class);
        targets.forEach((measure, target) -> off.put(
                measure,
                FlatPattern.measure(altered, measure)
                        .map(flat -> target - flat.mm())
                        .orElse(0.0)));
        return off;
    }

    private static Amounts start(List<Need> needs) {
        Map<Measure, Double> mm = new EnumMap<>(Measure.class);
        double depth = 0;
        for (Need need : needs) {
            if (need.decision().isAltered()) {
                mm.put(need.measure(), need.decision().amountMm());
                depth = need.measure() == Measure.BODY_RISE ? need.decision().amountMm() : depth;
            }
        }
        for (Measure crotch : List.of(Measure.FRONT_CROTCH_LENGTH, Measure.BACK_CROTCH_LENGTH)) {
            double byDepth = depth;
            mm.computeIfPresent(crotch, (m, amount) -> amount - byDepth);
        }
        return new Amounts(mm);
    }

    private WorkedPattern work(Amounts amounts) {
        return WorkedPattern.altered(pattern, order(amounts), rounds);
    }

    private List<Alteration> order(Amounts amounts) {
        return new WorkOrder(amounts, choices, kind, pattern).alterations();
    }

    /**
     * A measure that was left alone but that other changes have moved too far, or below the least wearing ease, is taken up: its
     * target becomes what it was to be.
     */
    private List<Need> promoted(List<Need> needs, Solved solved) {
        List<Need> all = new ArrayList<>();
        for (Need need : needs) {
            Optional<FlatMeasure> now = FlatPattern.measure(solved.worked.altered(), need.measure());
            boolean left = typed.isEmpty()
                    && need.decision().verdict() == Verdict.LEAVE
                    && !need.decision().overruled()
                    && !(choices.overrules().get(need.measure()) instanceof Overrule.Settled)
                    && need.flatMm().isPresent()
                    && now.isPresent()
                    && Coverage.isAltered(kind, inParts, need.measure());
            all.add(left ? promotedIfMoved(need, now.get().mm()) : need);
        }
        return all;
    }

    private Need promotedIfMoved(Need need, double nowMm) {
        double moved = nowMm - need.flatMm().getAsDouble();
        double still = need.needMm() - moved;
        double leave = choices.rule().leaveMm(need.measure(), choices.looseness());
        boolean tight = need.minimumEaseMm().isPresent()
                && need.easeMm() - still < need.minimumEaseMm().getAsDouble() - 0.5
                && still > 0;
        if (Math.abs(moved) <= NEAR_MM || !(Math.abs(still) > leave + 0.1 || tight)) {
            return need;
        }
        return need.with(new Decision(
                Verdict.ALTER,
                need.needMm(),
                "Left alone at first, but the other changes move it by "
                        + choices.show().showSigned(moved) + "; it is brought to what it should be.",
                false));
    }
}
