package trueseam.garment.ease;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.Body;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.table.ResourceTable;

/**
 * How much wearing ease each measure of a garment needs, in woven cloth.
 *
 * <p>The crotch depth's ease grows with the hip, so it is asked for with the body; everything else does not depend on
 * the body.
 *
 * @param entries the lines of the table; for one garment and measure, the first that fits the body's hip counts
 */
public record EaseTable(List<Entry> entries) {

    private static final EaseTable STANDARD = readStandard();

    /**
     * One line of the table.
     *
     * @param kind the garment
     * @param measure the measure
     * @param hipFromMm the smallest hip girth that it is for, mm; 0 for any
     * @param hipToMm the largest hip girth that it is for, mm; infinite for any
     * @param row the ease
     */
    public record Entry(GarmentKind kind, Measure measure, double hipFromMm, double hipToMm, EaseRow row) {

        private boolean isForAnyHip() {
            return hipFromMm == 0 && hipToMm == Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Keeps a copy of the lines.
     *
     * @param entries as of the record
     */
    public EaseTable {
        entries = List.copyOf(entries);
    }

    /**
     * The trade's table, with the source of every number.
     *
     * @return the table that ships with the program
     */
    public static EaseTable standard() {
        return STANDARD;
    }

    /**
     * The wearing ease of a measure that is the same for every body.
     *
     * @param kind the garment
     * @param measure the measure
     * @return the ease, or empty when the table has none or it depends on the hip
     */
    public Optional<EaseRow> wearing(GarmentKind kind, Measure measure) {
        return entries.stream()
                .filter(entry -> entry.kind() == kind && entry.measure() == measure && entry.isForAnyHip())
                .findFirst()
                .map(Entry::row);
    }

    /**
     * The wearing ease of a measure for one body.
     *
     * @param kind the garment
     * @param measure the measure
     * @param body the body; its hip girth decides the ease of the crotch depth
     * @return the ease, or empty when the table has none for such a body
     * @throws trueseam.garment.body.MissingMeasureException when the ease depends on a hip girth that the body lacks
     */
    public Optional<EaseRow> wearing(GarmentKind kind, Measure measure, Body body) {
        List<Entry> fitting = entries.stream()
                .filter(entry -> entry.kind() == kind && entry.measure() == measure)
                .toList();
        if (fitting.stream().allMatch(Entry::isForAnyHip)) {
            return wearing(kind, measure);
        }
        double hipMm = body.mm(Measure.HIP_GIRTH);
        return fitting.stream()
                .filter(entry -> entry.hipFromMm() <= hipMm && hipMm <= entry.hipToMm())
                .findFirst()
                .map(Entry::row);
    }

    private static EaseTable readStandard() {
        List<Entry> entries = new ArrayList<>();
        for (Map<String, String> line : ResourceTable.read(EaseTable.class, "wearing-ease.csv")) {
            EaseRow row = new EaseRow(inches(line.get("minimum")), inches(line.get("usual")), line.get("source"));
            String from = line.get("hip from");
            String to = line.get("hip to");
            for (String kind : line.get("garments").split(" ")) {
                entries.add(new Entry(
                        GarmentKind.valueOf(kind),
                        Measure.named(line.get("measure")),
                        from.isEmpty() ? 0 : inches(from),
                        to.isEmpty() ? Double.POSITIVE_INFINITY : inches(to),
                        row));
            }
        }
        return new EaseTable(entries);
    }

    private static double inches(String text) {
        return Length.parse(text, LengthUnit.INCH).mm();
    }
}
