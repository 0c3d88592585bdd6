package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Finds room for words on a piece, where they cover neither its edge nor its marks. For one piece and one thread. */
final class FreeRoom {

    private static final double CHORD_MM = 0.5;
    private static final double GRID_MM = 6;

    private static final double ROUNDING_MM = 1e-9;

    /** Covering a mark is as bad as standing this far from the wanted place, mm. */
    private static final double COVERING_MM = 400;

    private record Chord(Point from, Point to) {}

    private final Footprint paper;
    private final List<Chord> lines = new ArrayList<>();
    private final List<Bounds> words = new ArrayList<>();

    FreeRoom(Footprint paper) {
        this.paper = paper;
    }

    /** Keeps words off a line. */
    void keep(Path line) {
        List<Point> points = line.flattened(CHORD_MM);
        for (int i = 1; i < points.size(); i++) {
            lines.add(new Chord(points.get(i - 1), points.get(i)));
        }
    }

    /** Keeps words off a box. */
    void keep(Bounds box) {
        words.add(box);
    }

    /**
     * Room for a block of words; it is kept from now on.
     *
     * @param width mm
     * @param height mm
     * @param near where it should stand
     * @return the box, or nothing if none lies on the piece as a whole
     */
    Optional<Bounds> take(double width, double height, Point near) {
        return take(width, height, near, paper.bounds());
    }

    /**
     * Room for a block of words within an area; it is kept from now on.
     *
     * @param width mm
     * @param height mm
     * @param near where it should stand
     * @param all the area; one as high as the block lets it move across only
     * @return the box, or nothing if none lies on the piece as a whole
     */
    Optional<Bounds> take(double width, double height, Point near, Bounds all) {
        Optional<Bounds> best = best(width, height, near, all);
        best.ifPresent(this::keep);
        return best;
    }

    /** How much words must cover at the least to stand in an area; as bad as can be if they have no room there. */
    int least(double width, double height, Point near, Bounds all) {
        return best(width, height, near, all).map(this::covered).orElse(Integer.MAX_VALUE);
    }

    private Optional<Bounds> best(double width, double height, Point near, Bounds all) {
        Bounds best = null;
        double least = Double.MAX_VALUE;
        for (double x = all.minX(); x <= all.maxX() - width + ROUNDING_MM; x += GRID_MM) {
            for (double y = all.minY(); y <= all.maxY() - height + ROUNDING_MM; y += GRID_MM) {
                Bounds box = new Bounds(x, y, x + width, y + height);
                double cost = box.centre().distanceTo(near);
                if (cost < least && paper.holds(box)) {
                    cost += COVERING_MM * covered(box);
                    if (cost < least) {
                        least = cost;
                        best = box;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** How much a box would cover: a line counts one, words three. */
    int covered(Bounds box) {
        int n = 0;
        for (Bounds other : words) {
            if (other.meets(box, 0)) {
                n += 3;
            }
        }
        for (Chord line : lines) {
            if (Footprint.crosses(box, line.from(), line.to())) {
                n++;
            }
        }
        return n;
    }
}
