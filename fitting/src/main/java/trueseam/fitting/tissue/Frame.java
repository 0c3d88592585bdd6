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
 * @param before where the pattern, or the part of it in the hand, lay before the step
 * @param pose where the pattern, or the part of it in the hand, lies now
 * @param paper the pattern where it lies now, each part that it was cut into by itself
 * @param pin where the pin is, if it is in
 * @param marks the marks made so far, by name
 * @param drawn the lines drawn so far
 */
public record Frame(
        Step step,
        Motion before,
        Motion pose,
        List<Lying> paper,
        Optional<Point> pin,
        Map<String, Point> marks,
        List<Drawn> drawn) {

    // Immutable, marks in the order they were made.
    public Frame {
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
        drawn = List.copyOf(drawn);
        paper = List.copyOf(paper);
    }

    /**
     * A part of the pattern.
     *
     * @param outline its outline where the pattern lay at first; more than one where cutting left several pieces of paper
     * @param pose where it lies now
     * @param inHand whether it is what was moved last
     */
    public record Lying(List<Path> outline, Motion pose, boolean inHand) {

        // Immutable.
        public Lying {
            outline = List.copyOf(outline);
        }

        /**
         * The outline where it lies now.
         *
         * @return in the order of {@link #outline}
         */
        public List<Path> now() {
            return outline.stream().map(path -> path.moved(pose)).toList();
        }
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
