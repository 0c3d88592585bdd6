package trueseam.garment.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;

/**
 * Tells slips of the tape and the pen from bodies: an impossible value is a {@linkplain
 * trueseam.garment.finding.Severity#FAILURE failure}, one that fewer than one surveyed person in a thousand has is a
 * {@linkplain trueseam.garment.finding.Severity#WARNING warning}. It never changes a value.
 *
 * @param limits the limits, one for each measure and population at most
 */
public record Plausibility(List<Limit> limits) {

    /**
     * Keeps a copy of the limits.
     *
     * @param limits as of the record
     */
    public Plausibility {
        limits = List.copyOf(limits);
    }

    /**
     * The limits of a measure.
     *
     * @param measure the measure
     * @param population whose usual values count
     * @return the limits; those of {@link Population#ALL} when the population has none of its own; or empty
     */
    public Optional<Limit> limit(Measure measure, Population population) {
        return own(measure, population).or(() -> own(measure, Population.ALL));
    }

    private Optional<Limit> own(Measure measure, Population population) {
        return limits.stream()
                .filter(limit -> limit.measure() == measure && limit.population() == population)
                .findFirst();
    }

    /**
     * Questions one value.
     *
     * @param measure the measure
     * @param mm its value, mm
     * @param population whose usual values count
     * @return a failure, a warning, or empty when it is usual or nothing is known of that measure
     */
    public Optional<Finding> question(Measure measure, double mm, Population population) {
        return limit(measure, population).flatMap(limit -> question(limit, mm));
    }

    /**
     * Questions every value of a body, side by side where they were taken apart.
     *
     * @param body the body
     * @param population whose usual values count
     * @return the findings, measure by measure
     */
    public List<Finding> question(Body body, Population population) {
        List<Finding> findings = new ArrayList<>();
        for (Measure measure : body.measures()) {
            for (Side side : Side.values()) {
                body.value(measure, side)
                        .flatMap(value -> question(measure, value.mm(), population))
                        .filter(finding -> !findings.contains(finding))
                        .ifPresent(findings::add);
            }
        }
        return List.copyOf(findings);
    }

    private static Optional<Finding> question(Limit limit, double mm) {
        if (limit.usualFromMm() <= mm && mm <= limit.usualToMm()) {
            return Optional.empty();
        }
        String surveyed = show(limit.usualFromMm()) + " to " + show(limit.usualToMm());
        String slip = otherUnit(limit, mm);
        String term = limit.measure().term();
        if (mm < limit.impossibleBelowMm() || limit.impossibleAboveMm() < mm) {
            return Optional.of(Finding.failure(
                    term,
                    show(mm) + " cannot be right, surveyed people have " + surveyed + slip + "; measure it again."));
        }
        return Optional.of(Finding.warning(
                term,
                show(mm) + " is outside what 998 of 1000 surveyed people have, " + surveyed + slip
                        + "; look once more whether it was read and written right."));
    }

    /** The commonest slip is the wrong unit: say so when another one would make the value usual. */
    private static String otherUnit(Limit limit, double mm) {
        for (LengthUnit meant : LengthUnit.values()) {
            for (LengthUnit written : LengthUnit.values()) {
                double other = mm / written.mm() * meant.mm();
                if (meant != written && limit.usualFromMm() <= other && other <= limit.usualToMm()) {
                    return " (were " + meant.sign() + " meant instead of " + written.sign() + "?)";
                }
            }
        }
        return "";
    }

    private static String show(double mm) {
        return LengthFormat.millimetres().show(mm) + " ("
                + LengthFormat.inches(8).show(mm) + ")";
    }
}
