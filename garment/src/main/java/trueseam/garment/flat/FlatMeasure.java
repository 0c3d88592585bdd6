package trueseam.garment.flat;

import java.util.List;
import trueseam.garment.measure.Measure;

/**
 * A measure of the flat pattern with its working.
 *
 * @param measure the body measure that it is compared with
 * @param parts the readings that add up to it, at least one
 */
public record FlatMeasure(Measure measure, List<FlatPart> parts) {

    // Without a reading there is no measure.
    public FlatMeasure {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("A flat measure of " + measure + " needs a reading.");
        }
    }

    /**
     * The measure.
     *
     * @return sum of its parts, mm
     */
    public double mm() {
        double sum = 0;
        for (FlatPart part : parts) {
            sum += part.totalMm();
        }
        return sum;
    }
}
