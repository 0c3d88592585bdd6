package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** The paper that a piece covers, to 0.1 mm: what pages it needs and where on it there is room for words. */
final class Footprint {

    private static final double CHORD_MM = 0.1;

    private final List<List<Point>> rings = new ArrayList<>();
    private final Bounds bounds;

    /** Covers what lies in any of the closed outlines. */
    Footprint(List<Path> outlines) {
        Bounds all = outlines.get(0).bounds();
        for (Path outline : outlines) {
            rings.add(outline.flattened(CHORD_MM));
            all = all.with(outline.bounds());
        }
        bounds = all;
    }

    Bounds bounds() {
        return bounds;
    }

    boolean contains(Point p) {
        for (List<Point> ring : rings) {
            if (within(ring, p)) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(List<Point> ring, Point p) {
        boolean inside = false;
        for (int i = 1; i < ring.size(); i++) {
            Point a = ring.get(i - 1);
            Point b = ring.get(i);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether any of it lies in the box. */
    boolean meets(Bounds box) {
        return bounds.meets(box, 0) && (crosses(box) || contains(box.centre()));
    }

    /** Whether the box lies in it as a whole, in one outline. */
    boolean holds(Bounds box) {
        return !crosses(box) && contains(box.centre());
    }

    private boolean crosses(Bounds box) {
        for (List<Point> ring : rings) {
            for (int i = 1; i < ring.size(); i++) {
                if (crosses(box, ring.get(i - 1), ring.get(i))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Cuts the chord by the four sides in turn, as Liang and Barsky do (ACM Trans. Graphics 3, 1984, p. 1). */
    static boolean crosses(Bounds box, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] outwards = {-dx, dx, -dy, dy};
        double[] room = {a.x() - box.minX(), box.maxX() - a.x(), a.y() - box.minY(), box.maxY() - a.y()};
        double from = 0;
        double to = 1;
        for (int side = 0; side < 4; side++) {
            if (outwards[side] == 0) {
                if (room[side] < 0) {
                    return false;
                }
            } else if (outwards[side] < 0) {
                from = Math.max(from, room[side] / outwards[side]);
            } else {
                to = Math.min(to, room[side] / outwards[side]);
            }
        }
        return from <= to;
    }
}
