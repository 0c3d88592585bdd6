package trueseam.fitting.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.compare.Decision;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Sides;

/**
 * The fit after a sitting: what was altered before stays, and what was pinned on the trial garment of that altered pattern comes on top.
 *
 * <p>Laws: (1) every measure that was decided before keeps its decision, and its target moves by what the pins do to it on the altered
 * pattern, so that the plan neither takes back what was pinned nor counts it twice; (2) a measure that was left alone is not taken up
 * because the pins moved it; (3) a pinned change of a measure that the plan can find by measuring is added to that measure, so that the
 * altered pattern measures the two together; every other pinned change is done by its name; (4) without findings the fit is the one before;
 * (5) sittings are taken one after the other, each on the pattern that the ones before left.
 */
public final class NextFit {

    /** What the pins move a measure by less than this is not said: a hair of truing. */
    private static final double SAID_FROM_MM = 0.5;

    private final FitResult before;
    private final List<Pinned> pinned;
    private final Possible possible;

    private NextFit(FitResult before, List<Pinned> pinned) {
        this.before = before;
        this.pinned = pinned;
        this.possible = Possible.in(before.worked().original());
    }

    /**
     * The fit after sittings.
     *
     * @param before the fit whose altered pattern the first trial garment was cut from
     * @param sittings in the order of time
     * @return the last fit; it begins from the original pattern like the first
     * @throws IllegalArgumentException of the rooms, with a sentence, if the pattern cannot take a pinned change
     */
    public static FitResult after(FitResult before, List<Sitting> sittings) {
        FitResult fit = before;
        for (Sitting sitting : sittings) {
            if (!sitting.findings().isEmpty()) {
                fit = new NextFit(fit, sitting.findings()).result();
            }
        }
        return fit;
    }

    private FitResult result() {
        List<Pinned> byName = new ArrayList<>();
        Map<Measure, Double> byMeasure = new EnumMap<>(Measure.class);
        for (Pinned one : pinned) {
            Optional<Measure> measure = plannedMeasure(one);
            measure.ifPresent(m -> byMeasure.merge(m, one.amountMm(), Double::sum));
            if (measure.isEmpty()) {
                byName.add(one);
            }
        }
        Map<Measure, Double> moved = movedByPins();
        moved.putAll(byMeasure);
        FitChoices choices = before.choices().withOverrules(settled(moved, byMeasure.keySet()));
        List<Request> requests = new ArrayList<>(choices.requests());
        byName.forEach(one -> requests.add(one.request()));
        choices = choices.withRequests(requests);
        Pattern pattern = before.worked().original();
        return before.schematic()
                ? Fitting.onPaper(pattern, before.body(), before.size(), typed(), choices)
                : Fitting.fit(pattern, before.body(), before.size(), choices);
    }

    /**
     * The measure that this change is added to, so that the tape reads exactly what was pinned: one that the plan altered itself, or that
     * it left alone and nothing else moved. What another change brought where it is (an inside leg, by the chosen trouser length) has no
     * target of its own: there the pinned change is done by its name.
     */
    private Optional<Measure> plannedMeasure(Pinned one) {
        return one.at().side().isPresent()
                ? Optional.empty()
                : possible.byMeasure(one.remedy()).filter(measure -> before.needs().stream()
                        .anyMatch(need -> need.measure() == measure
                                && (need.decision().isAltered()
                                        || Math.abs(alteredMm(measure)) < SAID_FROM_MM
                                        || !possible.byName(one.remedy().entry()))));
    }

    /** What the pins do to each measure, found by carrying them out on the altered pattern alone. */
    private Map<Measure, Double> movedByPins() {
        boolean oneSided = pinned.stream().anyMatch(one -> one.at().side().isPresent());
        Pattern trial = oneSided
                ? Sides.split(before.worked().altered())
                : before.worked().altered();
        List<Alteration> alterations = new ArrayList<>();
        for (Pinned one : pinned) {
            Request request = one.request();
            // A girth over panels is shared by the plan; its own target is all that moves.
            if (plannedMeasure(one).isEmpty() || possible.byName(request.entry())) {
                alterations.add(new Applied(request.entry(), request.variant(), one.amountMm(), request.side()));
            }
        }
        Pattern after = WorkedPattern.altered(trial, alterations).altered();
        Map<Measure, Double> moved = new EnumMap<>(Measure.class);
        for (Need need : before.needs()) {
            Optional<FlatMeasure> was = FlatPattern.measure(trial, need.measure());
            Optional<FlatMeasure> is = FlatPattern.measure(after, need.measure());
            if (was.isPresent() && is.isPresent()) {
                moved.put(need.measure(), is.get().mm() - was.get().mm());
            }
        }
        return moved;
    }

    private Map<Measure, Overrule> settled(Map<Measure, Double> moved, Set<Measure> pinnedMeasures) {
        Map<Measure, Overrule> settled = new EnumMap<>(Measure.class);
        for (Need need : before.needs()) {
            Decision was = need.decision();
            double movedMm = moved.getOrDefault(need.measure(), 0.0);
            Decision open = !was.isAltered() && pinnedMeasures.contains(need.measure())
                    ? new Decision(Verdict.ALTER, alteredMm(need.measure()), was.reason(), true)
                    : was;
            settled.put(need.measure(), new Overrule.Settled(settled(open, movedMm), kept(need.measure(), movedMm)));
        }
        return settled;
    }

    /** What was decided before by herself or by earlier patterns, unless a pin changes it; so that the report still tells it. */
    private Optional<Overrule> kept(Measure measure, double movedMm) {
        Optional<Overrule> was =
                Optional.ofNullable(before.choices().overrules().get(measure));
        return Math.abs(movedMm) >= SAID_FROM_MM
                ? Optional.empty()
                : was.flatMap(own -> own instanceof Overrule.Settled settled ? settled.kept() : was);
    }

    /** What other changes did to a measure that was left alone. */
    private double alteredMm(Measure measure) {
        Optional<FlatMeasure> was = FlatPattern.measure(before.worked().original(), measure);
        Optional<FlatMeasure> is = FlatPattern.measure(before.worked().altered(), measure);
        return was.isPresent() && is.isPresent() ? is.get().mm() - was.get().mm() : 0;
    }

    private Decision settled(Decision was, double movedMm) {
        boolean moves = Math.abs(movedMm) >= SAID_FROM_MM;
        LengthFormat show = before.choices().show();
        String pins = moves ? " The pins of the trial garment add " + show.showSigned(movedMm) + "." : "";
        return was.verdict() == Verdict.ALTER
                // What was pinned is her own decision; what was not may still be left for the trial garment by itself.
                ? new Decision(Verdict.ALTER, was.amountMm() + movedMm, was.reason() + pins, was.overruled() || moves)
                : new Decision(was.verdict(), was.amountMm(), was.reason() + pins, was.overruled());
    }

    private Map<Measure, Double> typed() {
        Map<Measure, Double> typed = new EnumMap<>(Measure.class);
        before.needs().forEach(need -> need.flatMm().ifPresent(mm -> typed.put(need.measure(), mm)));
        return typed;
    }
}
