package trueseam.fitting.handle;

import java.util.Map;
import java.util.TreeMap;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.HeldFit;
import trueseam.garment.measure.Measure;

/**
 * A measure in the hand: from where it was taken hold of, how the whole fit comes out for any amount.
 *
 * <p>Laws: (1) each position is worked anew from the original pattern, so that it does not matter on which way the hand came there; (2)
 * the corrections of the fit that was taken hold of are where its own begin: it measures what a fit from the beginning measures, within
 * what corrections leave (0.02 mm a measure); (3) what the pattern cannot do is refused with the farthest that can be done, and
 * nothing is clamped.
 */
public final class Drag {

    /** The farthest is looked for to this part of the way wanted: at an inch, 1/10 mm. */
    private static final int HALVINGS = 8;

    private final HeldFit from;
    private final Measure measure;
    private final double startMm;

    private Drag(HeldFit from, Measure measure) {
        this.from = from;
        this.measure = measure;
        this.startMm = from.fit().needs().stream()
                .filter(need -> need.measure() == measure)
                .findFirst()
                .map(Need::decision)
                .orElseThrow(() -> new IllegalArgumentException(
                        measure + " has no line in the chart of this fit, so that there is nothing to take hold of."))
                .amountMm();
    }

    /**
     * Takes hold of a measure.
     *
     * @param from the fit as it is
     * @param measure the measure of one of its handles
     * @return the measure in the hand
     * @throws IllegalArgumentException if the chart of the fit has no line for the measure
     */
    public static Drag of(HeldFit from, Measure measure) {
        return new Drag(from, measure);
    }

    /**
     * By how much the measure is altered before the drag.
     *
     * @return mm in all, 0 where it is left alone
     */
    public double startMm() {
        return startMm;
    }

    /**
     * What she decides by putting the handle down.
     *
     * @param amountMm by how much the measure is altered in all, mm
     * @return the choices of the fit with this decision
     */
    public FitChoices choices(double amountMm) {
        Map<Measure, Overrule> own = new TreeMap<>(from.fit().choices().overrules());
        if (measure == Measure.TROUSER_LENGTH) {
            own.remove(Measure.INSIDE_LEG_LENGTH); // one line of the leg: what she decided last counts
        }
        own.put(measure, new Overrule.Amount(amountMm));
        return from.fit().choices().withOverrules(own);
    }

    /**
     * The fit for an amount.
     *
     * @param amountMm by how much the measure is altered in all, mm
     * @return the fit, or why it cannot be and how much can
     */
    public Dragged to(double amountMm) {
        try {
            return new Dragged.Moved(amountMm, fit(amountMm));
        } catch (IllegalArgumentException refused) {
            return farthest(amountMm, refused);
        }
    }

    private FitResult fit(double amountMm) {
        return from.with(choices(amountMm));
    }

    /** Halving between where it was taken hold of, which can be done, and what cannot; why is said of the first that cannot. */
    private Dragged.Refused farthest(double amountMm, IllegalArgumentException refused) {
        double can = startMm;
        double cannot = amountMm;
        IllegalArgumentException why = refused;
        for (int i = 0; i < HALVINGS; i++) {
            double mm = (can + cannot) / 2;
            try {
                fit(mm);
                can = mm;
            } catch (IllegalArgumentException nearer) {
                cannot = mm;
                why = nearer;
            }
        }
        return new Dragged.Refused(amountMm, can, String.valueOf(why.getMessage()));
    }
}
