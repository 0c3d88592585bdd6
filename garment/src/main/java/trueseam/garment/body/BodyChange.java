package trueseam.garment.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.measure.Measure;

/**
 * What one measure was when it was taken before, and what it is now.
 *
 * @param measure the measure
 * @param side the side; both for a measure that was taken for both together at either time
 * @param beforeMm what it was, mm
 * @param nowMm what it is, mm
 */
public record BodyChange(Measure measure, Side side, double beforeMm, double nowMm) {

    /**
     * What has changed from an earlier body to a later one: every measure that both have, left and right apart where either was
     * taken apart.
     *
     * @param before the earlier body
     * @param now the later one
     * @return the changes, small ones too, in the order of {@link Measure}
     */
    public static List<BodyChange> between(Body before, Body now) {
        List<BodyChange> changes = new ArrayList<>();
        for (Measure measure : now.measures()) {
            boolean apart = isApart(before, measure) || isApart(now, measure);
            for (Side side : apart ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.BOTH)) {
                between(before, now, measure, side).ifPresent(changes::add);
            }
        }
        return List.copyOf(changes);
    }

    private static Optional<BodyChange> between(Body before, Body now, Measure measure, Side side) {
        Optional<BodyValue> earlier = before.value(measure, side);
        Optional<BodyValue> later = now.value(measure, side);
        return earlier.isEmpty() || later.isEmpty()
                ? Optional.empty()
                : Optional.of(new BodyChange(
                        measure, side, earlier.get().mm(), later.get().mm()));
    }

    private static boolean isApart(Body body, Measure measure) {
        return body.readings().stream()
                .anyMatch(reading -> reading.measure() == measure && reading.side() != Side.BOTH);
    }

    /**
     * How much it has grown.
     *
     * @return mm, negative when it has become less
     */
    public double moreMm() {
        return nowMm - beforeMm;
    }

    /**
     * Whether the body has changed, as far as a tape can tell: two skilled readings of one body may differ by less. Source: ISO 20685,
     * see {@link trueseam.garment.measure.ErrorGroup}.
     *
     * @return true if the difference is more than measuring error
     */
    public boolean isBeyondMeasuringError() {
        return Math.abs(moreMm()) > measure.allowableErrorMm();
    }
}
