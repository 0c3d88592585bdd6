package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.compare.Decision;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/**
 * Needs that the program would alter by itself but that this pattern cannot take together with the others: they are left for the trial
 * garment, with the reason, rather than spoiling what can be proved. What she decided or asked for herself is never left out; what only
 * earlier patterns ask for may be.
 */
final class LeftForTrial {

    private LeftForTrial() {}

    /** Measures that may be left for the trial garment: altered by an entry of the repertoire because a rule or earlier patterns say so. */
    static List<Measure> candidates(List<Need> needs, GarmentKind kind, FitChoices choices) {
        List<Measure> measures = new ArrayList<>();
        for (Need need : needs) {
            if (need.decision().isAltered()
                    && (!need.decision().overruled() || choices.isStanding(need.measure()))
                    && WorkOrder.isByRepertoire(kind, need.measure())) {
                measures.add(0, need.measure());
            }
        }
        return measures;
    }

    static List<Need> without(List<Need> needs, Set<Measure> measures, String why) {
        return needs.stream()
                .map(need -> measures.contains(need.measure())
                        ? need.with(new Decision(
                                Verdict.TRY_ON,
                                0,
                                need.decision().reason() + " Left for the trial garment: " + why,
                                false))
                        : need)
                .toList();
    }

    /** Those of them whose amount came out larger than their entry is trusted with: a rule may not ask for that, only she may. */
    static Set<Measure> tooLarge(List<Measure> candidates, Amounts amounts, GarmentKind kind) {
        Set<Measure> large = EnumSet.noneOf(Measure.class);
        for (Measure measure : candidates) {
            double most = Repertoire.solving(kind, measure).orElseThrow().mostMm();
            if (Math.abs(amounts.of(measure)) > most + 1e-9) {
                large.add(measure);
            }
        }
        return large;
    }

    /**
     * Each of the needs that the rule altered, then each two of them.
     *
     * @param needs the chart
     * @return what may be left for the trial garment, the fewest first
     */
    static List<Set<Measure>> onesAndPairs(List<Need> needs) {
        List<Measure> ruled = needs.stream()
                .filter(need -> need.decision().isAltered() && !need.decision().overruled())
                .map(Need::measure)
                .toList();
        List<Set<Measure>> sets = new ArrayList<>();
        ruled.forEach(measure -> sets.add(EnumSet.of(measure)));
        for (int i = 0; i < ruled.size(); i++) {
            for (int j = i + 1; j < ruled.size(); j++) {
                sets.add(EnumSet.of(ruled.get(i), ruled.get(j)));
            }
        }
        return sets;
    }
}
