package trueseam.fitting.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import trueseam.garment.measure.Measure;

/**
 * How much each alteration is given, by the measure that it serves. At first the wanted change; then corrected until the flat
 * pattern measures what it should.
 *
 * @param mm total by measure, mm
 */
public record Amounts(Map<Measure, Double> mm) {

    // Immutable.
    public Amounts {
        mm = mm.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(mm));
    }

    /**
     * The amount for a measure.
     *
     * @param measure the measure
     * @return mm, 0 where it does not change
     */
    public double of(Measure measure) {
        return mm.getOrDefault(measure, 0.0);
    }

    /**
     * Whether a measure changes.
     *
     * @param measure the measure
     * @return true if an amount is given, be it 0
     */
    public boolean has(Measure measure) {
        return mm.containsKey(measure);
    }

    /**
     * The same with one amount more.
     *
     * @param measure the measure
     * @param byMm what is added to its amount, mm
     * @return the amounts
     */
    public Amounts plus(Measure measure, double byMm) {
        Map<Measure, Double> all = new EnumMap<>(Measure.class);
        all.putAll(mm);
        all.merge(measure, byMm, Double::sum);
        return new Amounts(all);
    }
}
