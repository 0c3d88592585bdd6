package trueseam.fitting.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.work.EarlierRounds;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * Brings every measure that is altered to its target, round by round: the pattern is worked, measured again, and the amounts are
 * corrected by what the measures are off ({@link Corrections}). Used by one thread, for one fit.
 */
final class Solving {

    /** A measure nearer to its target than this needs no correction: a fifth of what the proof allows. */
    static final double NEAR_MM = 0.02;

    private static final int ROUNDS = 15;

    /** Learned corrections that are not there after so many rounds hop to and fro across a limit of truing; plain ones creep up. */
    private static final int LEARNED_ROUNDS = 8;

    private final Pattern pattern;
    private final FitChoices choices;
    private final GarmentKind kind;
    private final Map<Measure, Double> drawn;
    private final Optional<HeldFit> near;
    private final EarlierRounds rounds;
    private final Corrections corrections;

    /** Amounts, and what they made of the pattern. */
    record Solved(Amounts amounts, WorkedPattern worked) {}

    /**
     * @param drawn what the pattern measures before, mm
     * @param near a fit of the same pattern whose rounds and corrections are gone on from
     */
    Solving(Pattern pattern, FitChoices choices, GarmentKind kind, Map<Measure, Double> drawn, Optional<HeldFit> near) {
        this.pattern = pattern;
        this.choices = choices;
        this.kind = kind;
        this.drawn = drawn;
        this.near = near;
        this.rounds = near.map(held -> new EarlierRounds(held.rounds())).orElseGet(EarlierRounds::new);
        this.corrections = near.map(held -> new Corrections(held.corrections())).orElseGet(() -> new Corrections(kind));
    }

    EarlierRounds rounds() {
        return rounds;
    }

    Corrections corrections() {
        return corrections;
    }

    Map<Measure, Double> targets(List<Need> needs) {
        Map<Measure, Double> targets = new EnumMap<>(Measure.class);
        for (Need need : needs) {
            Double before = drawn.get(need.measure());
            if (need.decision().isAltered() && before != null) {
                targets.put(need.measure(), before + need.decision().amountMm());
            }
        }
        return targets;
    }

    Solved solve(List<Need> needs) {
        return solve(
                needs,
                near.flatMap(held -> begun(goneOn(needs, held.fit())))
                        .or(() -> begun(usual(needs)))
                        .orElseGet(() -> worked(start(needs))));
    }

    private Solved worked(Amounts amounts) {
        return new Solved(amounts, work(amounts));
    }

    /** Nothing if the pattern cannot take that: a plain beginning asks for less. */
    private Optional<Solved> begun(Amounts amounts) {
        try {
            return Optional.of(worked(amounts));
        } catch (IllegalArgumentException tooFar) {
            return Optional.empty();
        }
    }

    /** What the changes usually come to. */
    private Amounts usual(List<Need> needs) {
        return corrections.arePlain() ? start(needs) : new Amounts(corrections.step(wanted(needs), 0));
    }

    /** From the amounts that came out there, by what was learned there. */
    private Amounts goneOn(List<Need> needs, FitResult fit) {
        Map<Measure, Double> wanted = corrections.arePlain() ? start(needs).mm() : wanted(needs);
        Map<Measure, Double> was = corrections.arePlain() ? start(fit.needs()).mm() : wanted(fit.needs());
        Map<Measure, Double> farther = new EnumMap<>(Measure.class);
        wanted.forEach((measure, mm) -> {
            if (was.containsKey(measure) && fit.amounts().has(measure)) {
                farther.put(measure, mm - was.get(measure));
            }
        });
        Amounts amounts = start(needs);
        for (Map.Entry<Measure, Double> step : corrections.step(farther, 0).entrySet()) {
            Measure measure = step.getKey();
            amounts = amounts.plus(measure, fit.amounts().of(measure) + step.getValue() - amounts.of(measure));
        }
        return amounts;
    }

    Solved solve(List<Need> needs, Solved before) {
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
        return corrected(targets, worked(start(needs)), ROUNDS);
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

    /** The changes that the chart wants, mm. */
    private static Map<Measure, Double> wanted(List<Need> needs) {
        Map<Measure, Double> mm = new EnumMap<>(Measure.class);
        for (Need need : needs) {
            if (need.decision().isAltered()) {
                mm.put(need.measure(), need.decision().amountMm());
            }
        }
        return mm;
    }

    /** The amounts that serve nothing but their own measure; a crotch length gets from the depth what that gives it anyway. */
    static Amounts start(List<Need> needs) {
        Map<Measure, Double> mm = wanted(needs);
        double depth = mm.getOrDefault(Measure.BODY_RISE, 0.0);
        for (Measure crotch : List.of(Measure.FRONT_CROTCH_LENGTH, Measure.BACK_CROTCH_LENGTH)) {
            mm.computeIfPresent(crotch, (m, amount) -> amount - depth);
        }
        return new Amounts(mm);
    }

    private WorkedPattern work(Amounts amounts) {
        return WorkedPattern.altered(pattern, order(amounts), rounds);
    }

    List<Alteration> order(Amounts amounts) {
        return new WorkOrder(amounts, choices, kind, pattern).alterations();
    }
}
