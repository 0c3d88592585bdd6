package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.compare.Decision;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.plan.Solving.Solved;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.proof.Prover;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.PieceKind;

/**
 * Tries plans until one can be carried out and proved: the whole chart first, with what other changes moved too far taken up, then
 * without as few as possible of the needs that may be left for the trial garment. Used by one thread, for one fit.
 */
final class Attempts {

    private static final String TOO_LARGE =
            "that is more than this alteration is trusted with; take the next size there, open the piece inside, or decide it yourself.";

    /** How often a measure that was left alone may be taken up because another change moved it. */
    private static final int PROMOTIONS = 3;

    private final Solving solving;
    private final FitChoices choices;
    private final GarmentKind kind;
    private final Set<PieceKind> inParts;
    private final boolean onPaper;

    /** @param onPaper what the schematic pieces measure says nothing: only what was typed counts */
    Attempts(Solving solving, FitChoices choices, GarmentKind kind, Set<PieceKind> inParts, boolean onPaper) {
        this.solving = solving;
        this.choices = choices;
        this.kind = kind;
        this.inParts = inParts;
        this.onPaper = onPaper;
    }

    /** A worked plan and its proofs. */
    record Attempt(List<Need> needs, Solved solved, FitReport report) {}

    private Attempt attempt(List<Need> chart) {
        List<Need> needs = chart;
        Solved solved = solving.solve(needs);
        for (int i = 0; i < PROMOTIONS; i++) {
            List<Need> promoted = promoted(needs, solved);
            if (promoted.equals(needs)) {
                break;
            }
            needs = promoted;
            solved = solving.solve(needs, solved);
        }
        return new Attempt(
                needs,
                solved,
                Prover.prove(
                        solved.worked(), solving.targets(needs), solved.worked().capEaseAsked()));
    }

    /**
     * The whole plan if it can be carried out and proved; else the plan without as few as possible of the needs that may be left for the
     * trial garment.
     */
    Attempt proven(List<Need> chart) {
        List<Need> needs = LeftForTrial.without(
                chart,
                LeftForTrial.tooLarge(LeftForTrial.candidates(chart, kind, choices), Solving.start(chart), kind),
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
                LeftForTrial.candidates(proven.needs(), kind, choices),
                proven.solved().amounts(),
                kind);
        return large.isEmpty()
                ? proven
                : without(needs, large, TOO_LARGE)
                        .filter(attempt -> attempt.report().holds())
                        .orElse(proven);
    }

    private Optional<Attempt> without(List<Need> needs, Set<Measure> left, String why) {
        try {
            return Optional.of(attempt(LeftForTrial.without(needs, left, why)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /**
     * A measure that was left alone but that other changes have moved too far, or below the least wearing ease, is taken up: its
     * target becomes what it was to be.
     */
    private List<Need> promoted(List<Need> needs, Solved solved) {
        List<Need> all = new ArrayList<>();
        for (Need need : needs) {
            Optional<FlatMeasure> now = FlatPattern.measure(solved.worked().altered(), need.measure());
            boolean left = !onPaper
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
        if (Math.abs(moved) <= Solving.NEAR_MM || !(Math.abs(still) > leave + 0.1 || tight)) {
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
