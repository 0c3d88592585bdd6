package trueseam.output.figure;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trueseam.garment.measure.Measure;

/**
 * The way of the tape for one measure, on the wearer's left where it has sides.
 *
 * @param measure the measure
 * @param strokes the tape: smooth stretches, one after the other
 * @param levels thin lines that carry a level over to where the tape is held beside the body
 * @param marks the points that it starts from, ends at or runs over
 * @param goesRound whether the part behind the body is drawn too, dashed; a tape in the middle of front and back would only
 *     hide itself
 */
record TapePath(
        Measure measure,
        List<List<Spot>> strokes,
        List<List<Spot>> levels,
        Map<BodyPoint, List<Spot>> marks,
        boolean goesRound) {

    TapePath {
        strokes = List.copyOf(strokes);
        levels = List.copyOf(levels);
        marks = Collections.unmodifiableMap(new TreeMap<>(marks));
    }

    /** The same on the wearer's right. */
    TapePath mirrored() {
        Map<BodyPoint, List<Spot>> others = new TreeMap<>();
        marks.forEach((point, spots) ->
                others.put(point, spots.stream().map(Spot::mirrored).toList()));
        return new TapePath(measure, mirrored(strokes), mirrored(levels), others, goesRound);
    }

    private static List<List<Spot>> mirrored(List<List<Spot>> lines) {
        return lines.stream()
                .map(line -> line.stream().map(Spot::mirrored).toList())
                .toList();
    }

    /** The tape's length on the drawn body, mm: for checking proportions, not for measuring. */
    double drawnMm() {
        double mm = 0;
        for (List<Spot> stroke : strokes) {
            for (int i = 1; i < stroke.size(); i++) {
                Spot a = stroke.get(i - 1);
                Spot b = stroke.get(i);
                mm += Math.sqrt(square(a.x() - b.x()) + square(a.y() - b.y()) + square(a.z() - b.z()));
            }
        }
        return mm;
    }

    private static double square(double x) {
        return x * x;
    }
}
