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
 * @param marked its corners, where the file marks them; none where they are to be found
 */
public record Outline(Path line, List<Path> inside, List<String> words, List<Point> marked) {

    /** An outline is closed; walked anticlockwise, it has its area to the left. */
    public Outline {
        inside = List.copyOf(inside);
        words = List.copyOf(words);
        marked = List.copyOf(marked);
        if (!line.isClosed()) {
            throw new IllegalArgumentException("an outline that does not close");
        }
        if (line.signedArea() < 0) {
            line = line.reversed();
        }
    }

    /**
     * A piece whose corners are to be found.
     *
     * @param line the stitching line, closed, anticlockwise, mm
     * @param inside lines drawn inside it: grain, darts, anything
     * @param words what is written in it
     */
    public Outline(Path line, List<Path> inside, List<String> words) {
        this(line, inside, words, List.of());
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
