package trueseam.output.chart;

import java.util.Optional;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.measure.Measure;

/**
 * What one way of changing the sleeve's girth costs.
 *
 * @param cap what the cap keeps
 * @param taken whether it is the way that this fit takes
 * @param before the sleeve before
 * @param after the sleeve after
 */
public record SleeveCost(CapChoice cap, boolean taken, SleeveFigures before, SleeveFigures after) {

    /**
     * The cost in a fit.
     *
     * @param fit the fit
     * @param taken whether it is the one that was chosen
     * @return the cost, or nothing where no sleeve girth is altered
     */
    public static Optional<SleeveCost> of(FitResult fit, boolean taken) {
        if (!fit.amounts().has(Measure.UPPER_ARM_GIRTH)) {
            return Optional.empty();
        }
        return SleeveFigures.of(fit.worked().original())
                .flatMap(before -> SleeveFigures.of(fit.worked().altered())
                        .map(after -> new SleeveCost(fit.choices().cap(), taken, before, after)));
    }

    /**
     * The way in words.
     *
     * @return for example {@code keep the cap seam}
     */
    public String word() {
        return switch (cap) {
            case KEEP_CAP_SEAM -> "keep the cap seam";
            case KEEP_CAP_HEIGHT -> "keep the cap height";
        };
    }
}
