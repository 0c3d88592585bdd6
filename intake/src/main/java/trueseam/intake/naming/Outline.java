package trueseam.intake.naming;

import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * One piece of a drawing, as it is drawn: nothing is named yet.
 *
 * @param line the stitching line, closed, anticlockwise, mm
 * @param inside lines drawn inside it: grain, darts, anything
 * @param words what is written in it
 */
public record Outline(Path line, List<Path> inside, List<String> words) {

    /** An outline is closed; walked anticlockwise, it has its area to the left. */
    public Outline {
        inside = List.copyOf(inside);
        words = List.copyOf(words);
        if (!line.isClosed()) {
            throw new IllegalArgumentException("an outline that does not close");
        }
        if (line.signedArea() < 0) {
            line = line.reversed();
        }
    }

    /**
     * The dart legs drawn inside: two lines that meet at a point inside and end on the outline.
     *
     * @return the darts
     */
    List<InnerDart> darts() {
        return InnerDart.of(this);
    }

    /**
     * Where it turns: the ends of its edges, whatever they are.
     *
     * @return places along the line, mm, in order
     */
    public List<Double> corners() {
        return Corners.of(this, darts());
    }

    /**
     * Whether a point lies on the outline.
     *
     * @param p the point
     * @param toleranceMm how near
     * @return true if so
     */
    boolean has(Point p, double toleranceMm) {
        return line.nearest(p).point().isNear(p, toleranceMm);
    }
}
