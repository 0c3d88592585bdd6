package trueseam.fitting.plan;

import java.util.EnumMap;
import java.util.Map;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/**
 * How much to add to each amount so that the measures come to their targets. At first the measures are taken to go
 * with the amounts as they usually do ({@link UsualGrowth}: a wider bust is also a lower underarm, a deeper crotch a longer crotch
 * seam); from what each round then really moves it learns how they go in this pattern. Used by one thread, for one fit.
 *
 * <p>Source: C. G. Broyden, "A class of methods for solving nonlinear simultaneous equations", Mathematics of Computation 19
 * (1965), the first method, in the form for the inverse. Adding to each amount what its own measure is off, tried before, took
 * about twice as many rounds.
 */
final class Corrections {

    /** A measure that moved by less did not move: rounding. */
    private static final double ROUNDING_MM = 1e-6;

    /**
     * Nothing is learned from a smaller step: truing leaves small bends alone, so that measures jump by about 0.02 mm where one
     * passes its limit.
     */
    private static final double TEACHING_MM = 0.2;

    /** Nor from a step that moved the measures by less than this share of what was expected, or the other way. */
    private static final double LEAST_SHARE = 0.1;

    /** By how much an amount (outer) must grow for a measure (inner) that is 1 mm short; where absent, 1 for its own, else 0. */
    private final Map<Measure, Map<Measure, Double>> growth = new EnumMap<>(Measure.class);

    private Map<Measure, Double> lastOff = Map.of();
    private Map<Measure, Double> lastStep = Map.of();
    private boolean plain;

    /** Begins with how the measures of such a garment usually go together. */
    Corrections(GarmentKind kind) {
        UsualGrowth.of(kind).forEach((amount, usual) -> growth.put(amount, new EnumMap<>(usual)));
    }

    /** Begins with what was learned in another fit of the same pattern. */
    Corrections(Corrections before) {
        before.growth.forEach((amount, learned) -> growth.put(amount, new EnumMap<>(learned)));
        plain = before.plain;
    }

    /** Whether each amount is corrected by what its own measure is off and by nothing else. */
    boolean arePlain() {
        return plain;
    }

    /** Learns nothing more and lays aside what was learned. */
    void stayPlain() {
        plain = true;
    }

    /** Other measures have their targets from here on. */
    void newTargets() {
        lastStep = Map.of();
    }

    /**
     * What to add next.
     *
     * @param offMm by measure, how far it is short of its target after the last step, mm
     * @param nearMm a measure nearer than this asks for nothing
     * @return what to add to the amount of each measure, mm
     */
    Map<Measure, Double> next(Map<Measure, Double> offMm, double nearMm) {
        if (!plain && !lastStep.isEmpty()) {
            learn(offMm);
        }
        Map<Measure, Double> step = step(offMm, nearMm);
        lastOff = Map.copyOf(offMm);
        lastStep = step;
        return step;
    }

    /**
     * What to add to the amounts so that the measures move.
     *
     * @param offMm by measure, how far it is to move, mm
     * @param nearMm a measure that is to move no farther asks for nothing
     * @return what to add to the amount of each measure, mm
     */
    Map<Measure, Double> step(Map<Measure, Double> offMm, double nearMm) {
        Map<Measure, Double> step = new EnumMap<>(Measure.class);
        for (Measure amount : offMm.keySet()) {
            double sum = 0;
            for (Map.Entry<Measure, Double> off : offMm.entrySet()) {
                if (Math.abs(off.getValue()) > nearMm) {
                    sum += growth(amount, off.getKey()) * off.getValue();
                }
            }
            step.put(amount, sum);
        }
        return step;
    }

    private double growth(Measure amount, Measure measure) {
        double own = amount == measure ? 1 : 0;
        Map<Measure, Double> learned = growth.get(amount);
        boolean isPlain = plain || learned == null;
        return isPlain ? own : learned.getOrDefault(measure, own);
    }

    /** H grows by (s - H y) s' H / (s' H y), H being the growth, s the last step and y what it moved. */
    private void learn(Map<Measure, Double> offMm) {
        Map<Measure, Double> missed = new EnumMap<>(Measure.class); // s - H y
        Map<Measure, Double> row = new EnumMap<>(Measure.class); // s' H
        double along = 0; // s' H y
        double square = 0;
        double longest = 0;
        for (Map.Entry<Measure, Double> step : lastStep.entrySet()) {
            double mm = step.getValue();
            double expected = 0; // the step that would have moved the measures so
            for (Measure measure : offMm.keySet()) {
                double grows = growth(step.getKey(), measure);
                expected += grows * moved(measure, offMm);
                row.merge(measure, mm * grows, Double::sum);
            }
            missed.put(step.getKey(), mm - expected);
            along += mm * expected;
            square += mm * mm;
            longest = Math.max(longest, Math.abs(mm));
        }
        if (longest < TEACHING_MM || along < LEAST_SHARE * square) {
            return;
        }
        for (Map.Entry<Measure, Double> miss : missed.entrySet()) {
            Map<Measure, Double> learned = new EnumMap<>(Measure.class);
            for (Map.Entry<Measure, Double> one : row.entrySet()) {
                learned.put(
                        one.getKey(), growth(miss.getKey(), one.getKey()) + miss.getValue() * one.getValue() / along);
            }
            growth.merge(miss.getKey(), learned, Corrections::with);
        }
    }

    private static Map<Measure, Double> with(Map<Measure, Double> before, Map<Measure, Double> learned) {
        before.putAll(learned);
        return before;
    }

    private double moved(Measure measure, Map<Measure, Double> offMm) {
        double mm = lastOff.get(measure) - offMm.get(measure);
        return Math.abs(mm) > ROUNDING_MM ? mm : 0;
    }
}
