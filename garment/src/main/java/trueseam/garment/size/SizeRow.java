package trueseam.garment.size;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.measure.Measure;

/**
 * The body measures of one size.
 *
 * @param size what the size is called, such as {@code 14}; never blank
 * @param mm the measures that the table gives, mm, each positive; in the order of {@link Measure}
 */
public record SizeRow(String size, Map<Measure, Double> mm) {

    /**
     * Keeps a copy of the measures.
     *
     * @param size as of the record
     * @param mm as of the record
     * @throws IllegalArgumentException when the size is blank or a measure is not a positive length
     */
    public SizeRow {
        if (size.isBlank()) {
            throw new IllegalArgumentException("a size needs a name");
        }
        mm.forEach((measure, value) -> {
            if (!Double.isFinite(value) || value <= 0) {
                throw new IllegalArgumentException("size " + size + ": " + measure.term() + " is " + value + " mm");
            }
        });
        Map<Measure, Double> copy = new EnumMap<>(Measure.class);
        copy.putAll(mm);
        mm = Collections.unmodifiableMap(copy);
    }

    /**
     * One measure of this size.
     *
     * @param measure the measure
     * @return mm, or empty when the table does not give it
     */
    public Optional<Double> value(Measure measure) {
        return Optional.ofNullable(mm.get(measure));
    }

    /**
     * The typical body of this size, labelled {@code size 14}.
     *
     * @return a body whose readings all come from the table
     */
    public Body asBody() {
        return new Body(
                "size " + size,
                mm.entrySet().stream()
                        .map(entry -> Reading.of(entry.getKey(), entry.getValue(), Origin.TABLE, ""))
                        .toList());
    }
}
