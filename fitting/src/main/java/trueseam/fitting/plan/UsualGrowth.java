package trueseam.fitting.plan;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.table.ResourceTable;

/**
 * How much an amount usually grows for a measure that is short, as fits of surveyed people came out: only where corrections begin. What a
 * fit comes to does not depend on it but within what corrections leave, how soon it is there does.
 */
final class UsualGrowth {

    private static final Map<GarmentKind, Map<Measure, Map<Measure, Double>>> BY_KIND = read();

    private UsualGrowth() {}

    /** By amount and measure, mm for 1 mm; where absent, 1 for its own measure, else 0. */
    static Map<Measure, Map<Measure, Double>> of(GarmentKind kind) {
        return BY_KIND.getOrDefault(kind, Map.of());
    }

    private static Map<GarmentKind, Map<Measure, Map<Measure, Double>>> read() {
        Map<GarmentKind, Map<Measure, Map<Measure, Double>>> all = new EnumMap<>(GarmentKind.class);
        for (Map<String, String> row : ResourceTable.read(UsualGrowth.class, "growth.csv")) {
            all.computeIfAbsent(
                            GarmentKind.valueOf(row.get("garment").toUpperCase(Locale.ROOT)),
                            kind -> new EnumMap<>(Measure.class))
                    .computeIfAbsent(Measure.named(row.get("amount")), amount -> new EnumMap<>(Measure.class))
                    .put(Measure.named(row.get("measure")), Double.valueOf(row.get("growth")));
        }
        return all;
    }
}
