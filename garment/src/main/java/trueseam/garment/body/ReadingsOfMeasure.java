package trueseam.garment.body;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trueseam.garment.measure.Measure;

/** The readings of one measure, and the rules by which they become a value: see the laws of {@link Body}. */
record ReadingsOfMeasure(List<Reading> readings) {

    static ReadingsOfMeasure of(Body body, Measure measure) {
        List<Reading> all = body.readings().stream()
                .filter(reading -> reading.measure() == measure)
                .toList();
        int best = all.stream()
                .mapToInt(reading -> distrust(reading.origin()))
                .min()
                .orElse(0);
        return new ReadingsOfMeasure(all.stream()
                .filter(reading -> distrust(reading.origin()) == best)
                .toList());
    }

    /** A table speaks of a typical body, so it comes after anything that was found on this one. */
    private static int distrust(Origin origin) {
        return switch (origin) {
            case TAPED -> 0;
            case STAND_IN -> 1;
            case ESTIMATED -> 2;
            case TABLE -> 3;
        };
    }

    Optional<BodyValue> value(Side side) {
        if (side != Side.BOTH) {
            List<Reading> ofSide = latestFor(side);
            return ofSide.isEmpty() ? Optional.empty() : Optional.of(mean(ofSide));
        }
        List<Reading> left = latestFor(Side.LEFT);
        List<Reading> right = latestFor(Side.RIGHT);
        if (left.isEmpty() || right.isEmpty() || left.equals(right)) {
            List<Reading> known = left.isEmpty() ? right : left;
            return known.isEmpty() ? Optional.empty() : Optional.of(mean(known));
        }
        return Optional.of(meanOfSides(mean(left), mean(right)));
    }

    /** The newest readings of the side itself or of both; on the same day the side itself is the closer word. */
    private List<Reading> latestFor(Side side) {
        List<Reading> own = latest(side);
        List<Reading> both = latest(Side.BOTH);
        if (own.isEmpty() || both.isEmpty()) {
            return own.isEmpty() ? both : own;
        }
        return day(both.get(0)).isAfter(day(own.get(0))) ? both : own;
    }

    private List<Reading> latest(Side side) {
        List<Reading> ofSide =
                readings.stream().filter(reading -> reading.side() == side).toList();
        Optional<LocalDate> latest = ofSide.stream().map(ReadingsOfMeasure::day).max(Comparator.naturalOrder());
        return ofSide.stream()
                .filter(reading -> day(reading).equals(latest.orElseThrow()))
                .toList();
    }

    private static LocalDate day(Reading reading) {
        return reading.date().orElse(LocalDate.MIN);
    }

    private static BodyValue mean(List<Reading> readings) {
        var mm = readings.stream().mapToDouble(Reading::mm).summaryStatistics();
        return new BodyValue(
                mm.getAverage(),
                mm.getMax() - mm.getMin(),
                readings.size(),
                readings.get(0).origin(),
                notes(readings.stream().map(Reading::note)));
    }

    private static BodyValue meanOfSides(BodyValue left, BodyValue right) {
        return new BodyValue(
                (left.mm() + right.mm()) / 2,
                Math.max(left.spreadMm(), right.spreadMm()),
                left.readings() + right.readings(),
                left.origin(),
                notes(Stream.of(left.note(), right.note())));
    }

    private static String notes(Stream<String> notes) {
        return notes.filter(note -> !note.isEmpty()).distinct().collect(Collectors.joining("; "));
    }
}
