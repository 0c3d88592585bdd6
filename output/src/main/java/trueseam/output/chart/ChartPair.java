package trueseam.output.chart;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.measure.Measure;

/**
 * Two fittings of one person side by side, measure by measure.
 *
 * @param lines every measure that either chart has, in the order of {@link Measure}
 */
public record ChartPair(List<Line> lines) {

    /** Less than the smallest step of a ruler is no difference, mm. */
    private static final double ALIKE_MM = 0.5;

    /** Does not change. */
    public ChartPair {
        lines = List.copyOf(lines);
    }

    /**
     * One measure.
     *
     * @param measure the measure
     * @param first its line in the first chart, if that has it
     * @param second its line in the second
     */
    public record Line(Measure measure, Optional<ChartLine> first, Optional<ChartLine> second) {

        /**
         * Whether the second garment needs something else than the first.
         *
         * @return true if both have the measure and the needs are apart by a step of a ruler
         */
        public boolean needDiffers() {
            return differs(
                    first.map(line -> OptionalDouble.of(line.need().needMm())),
                    second.map(line -> OptionalDouble.of(line.need().needMm())));
        }

        /**
         * Whether another amount was taken.
         *
         * @return true if both have the measure and the amounts are apart by a step of a ruler
         */
        public boolean amountDiffers() {
            return differs(
                    first.map(line -> OptionalDouble.of(line.need().decision().amountMm())),
                    second.map(line -> OptionalDouble.of(line.need().decision().amountMm())));
        }

        /**
         * Whether the altered patterns measure differently.
         *
         * @return true if both are known and are apart by a step of a ruler
         */
        public boolean resultDiffers() {
            return differs(first.map(ChartLine::afterMm), second.map(ChartLine::afterMm));
        }

        private static boolean differs(Optional<OptionalDouble> one, Optional<OptionalDouble> other) {
            OptionalDouble a = one.orElse(OptionalDouble.empty());
            OptionalDouble b = other.orElse(OptionalDouble.empty());
            return a.isPresent() && b.isPresent() && Math.abs(a.getAsDouble() - b.getAsDouble()) >= ALIKE_MM;
        }
    }

    /**
     * Lays two charts side by side.
     *
     * @param first the first
     * @param second the second
     * @return both
     */
    public static ChartPair of(FittingChart first, FittingChart second) {
        Map<Measure, ChartLine> ones = byMeasure(first);
        Map<Measure, ChartLine> others = byMeasure(second);
        List<Line> lines = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (ones.containsKey(measure) || others.containsKey(measure)) {
                lines.add(new Line(
                        measure, Optional.ofNullable(ones.get(measure)), Optional.ofNullable(others.get(measure))));
            }
        }
        return new ChartPair(lines);
    }

    private static Map<Measure, ChartLine> byMeasure(FittingChart chart) {
        Map<Measure, ChartLine> lines = new EnumMap<>(Measure.class);
        chart.lines().forEach(line -> lines.put(line.need().measure(), line));
        return lines;
    }
}
