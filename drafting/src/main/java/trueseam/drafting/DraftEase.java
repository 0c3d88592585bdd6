package trueseam.drafting;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.ease.EaseShares;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/**
 * How much larger than the figure a shell is drafted. What is not chosen here is the usual wearing ease of {@link
 * EaseTable}, or none where the table has no line.
 *
 * @param chosenMm ease chosen instead of the usual one, whole garment, mm
 * @param capMm how much longer the sleeve cap is than the armhole, mm
 * @param backShoulderMm how much longer the back shoulder is than the front one, its dart sewn, mm
 */
public record DraftEase(Map<Measure, Double> chosenMm, double capMm, double backShoulderMm) {

    private static final Map<GarmentKind, Map<Measure, List<EaseTable.Entry>>> USUAL = usual();

    // Keeps a copy.
    public DraftEase {
        Map<Measure, Double> copy = new EnumMap<>(Measure.class);
        copy.putAll(chosenMm);
        chosenMm = Collections.unmodifiableMap(copy);
    }

    /**
     * A fitted shell: usual wearing ease, 1 in in the sleeve cap (sources disagree, 3/4 to 1 1/2 in), 1/4 in in the back
     * shoulder (common practice 1/4 to 1/2 in), 2 in at the wrist because the sleeve has no opening and the hand has to
     * pass, and 1 in at the elbow (common practice 1 to 1 1/2 in), 4 in at the knee for a straight leg (NM209 asks for 1 in at least).
     *
     * @return the ease
     */
    public static DraftEase fitted() {
        return new DraftEase(
                Map.of(Measure.WRIST_GIRTH, 50.8, Measure.ELBOW_GIRTH, 25.4, Measure.KNEE_GIRTH, 101.6), 25.4, 6.35);
    }

    /**
     * The same with another ease at one measure.
     *
     * @param measure where
     * @param easeMm whole garment, mm
     * @return the ease
     */
    public DraftEase with(Measure measure, double easeMm) {
        Map<Measure, Double> more = new EnumMap<>(Measure.class);
        more.putAll(chosenMm);
        more.put(measure, easeMm);
        return new DraftEase(more, capMm, backShoulderMm);
    }

    /**
     * The same with another cap ease.
     *
     * @param easeMm cap less armhole, mm
     * @return the ease
     */
    public DraftEase withCap(double easeMm) {
        return new DraftEase(chosenMm, easeMm, backShoulderMm);
    }

    /**
     * The same with the ease at the bust divided.
     *
     * @param shares how much of it lies in the width across the back and across the front; the rest is at the armholes
     * @param kind the garment
     * @param figure whom for
     * @return the ease
     */
    public DraftEase divided(EaseShares shares, GarmentKind kind, DraftFigure figure) {
        List<Double> half = shares.onTheHalf(mm(figure.trunkGirth(), kind, figure));
        return with(Measure.ACROSS_BACK_WIDTH, 2 * half.get(0)).with(Measure.ACROSS_FRONT_WIDTH, 2 * half.get(2));
    }

    /**
     * The ease of one measure of a garment for a figure; that of the body rise grows with the hip.
     *
     * @param measure the measure
     * @param kind the garment
     * @param figure whom for
     * @return mm, 0 where nothing is known
     */
    public double mm(Measure measure, GarmentKind kind, DraftFigure figure) {
        Double chosen = chosenMm.get(measure);
        if (chosen != null) {
            return chosen;
        }
        for (EaseTable.Entry entry : USUAL.get(kind).getOrDefault(measure, List.of())) {
            double hip = figure.mm(Measure.HIP_GIRTH);
            if (entry.hipFromMm() <= hip && hip <= entry.hipToMm()) {
                return entry.row().usualMm();
            }
        }
        return 0;
    }

    private static Map<GarmentKind, Map<Measure, List<EaseTable.Entry>>> usual() {
        Map<GarmentKind, Map<Measure, List<EaseTable.Entry>>> all = new EnumMap<>(GarmentKind.class);
        for (GarmentKind kind : GarmentKind.values()) {
            Map<Measure, List<EaseTable.Entry>> of = new EnumMap<>(Measure.class);
            for (Measure measure : Measure.values()) {
                List<EaseTable.Entry> lines = EaseTable.standard().entries().stream()
                        .filter(entry -> entry.kind() == kind && entry.measure() == measure)
                        .toList();
                if (!lines.isEmpty()) {
                    of.put(measure, lines);
                }
            }
            all.put(kind, Collections.unmodifiableMap(of));
        }
        return Collections.unmodifiableMap(all);
    }
}
