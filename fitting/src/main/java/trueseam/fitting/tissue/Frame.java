package trueseam.fitting.tissue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * The table after a step: enough to draw it.
 *
 * @param step the step just done
 * @param before where the pattern lay before the step
 * @param pose where the pattern lies now
 * @param pin where the pin is, if it is in
 * @param marks the marks made so far, by name
 * @param drawn the lines drawn so far
 */
public record Frame(
        Step step, Motion before, Motion pose, Optional<Point> pin, Map<String, Point> marks, List<Drawn> drawn) {

    // Immutable, marks in the order they were made.
    public Frame {
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
        drawn = List.copyOf(drawn);
    }

    /**
     * A line on the tissue.
     *
     * @param path where it runs
     * @param kind how it came there
     */
    public record Drawn(Path path, Kind kind) {}

    /** How a line came onto the tissue. */
    public enum Kind {
        /** Traced with the pattern where it lay at first. */
        KEPT,
        /** Traced after the pattern had been moved. */
        CARRIED,
        /** Drawn new. */
        JOINED
    }
}
