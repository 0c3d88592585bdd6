package trueseam.fitting.standing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen.Settled;

/**
 * What one earlier pattern says.
 *
 * @param fit the earlier fit
 * @param settled how it came about
 * @param changedMm by how much that pattern was altered, mm
 * @param mm what is held against the others, mm: for a measure the body measure that the finished pattern was made for, moved along
 *     where the body has changed since; for a named alteration its amount
 * @param movedMm by how much the body has changed since, mm, where that is more than the tape can be off; else 0
 * @param drawnForMm the body measure that the pattern was drawn for in its size, mm; nothing for a named alteration
 * @param counts how it counts
 */
public record Evidence(
        EarlierFit fit,
        Settled settled,
        double changedMm,
        double mm,
        double movedMm,
        OptionalDouble drawnForMm,
        Counts counts) {

    /** How a piece of evidence counts. */
    public enum Counts {
        /** It agrees with what is proposed. */
        AGREES,
        /** It was left alone there, and what is proposed differs by no more than was then left. */
        BEARS_OUT,
        /** It says otherwise. */
        AGAINST,
        /** It was left for the trial garment, or another measure decided: it says nothing. */
        OPEN,
        /** It was itself taken from earlier patterns and has not been worn. */
        HEARSAY,
        /** Two fits of one pattern on one day differ, and neither is marked as worn. */
        UNDECIDED
    }

    /** Whether she decided it herself, rather than a rule by what the tape read. */
    boolean isOwn() {
        return settled == Settled.DECIDED;
    }

    Evidence counted(Counts other) {
        return new Evidence(fit, settled, changedMm, mm, movedMm, drawnForMm, other);
    }

    /**
     * How old it is.
     *
     * @param today the day
     * @return whole months; nothing where the fit has no date
     */
    public OptionalLong ageMonths(LocalDate today) {
        return fit.made()
                .map(made -> OptionalLong.of(ChronoUnit.MONTHS.between(made, today)))
                .orElse(OptionalLong.empty());
    }
}
