package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trueseam.geometry.Point;

/** In which order details stand below each other, so that the lines from them to their places do not cross. */
final class Leaders {

    /** Lines to places nearer in height than this could cross. */
    private static final double SAME_HEIGHT_MM = 8;

    private Leaders() {}

    /** The higher a place lies, the higher its detail; of places at one height the farther one, to the left, stands above. */
    static List<Detail> inOrder(List<Detail> details, Function<Detail, Point> place) {
        List<Detail> ordered = new ArrayList<>(details);
        for (int i = 1; i < ordered.size(); i++) {
            for (int j = i; j > 0 && isAbove(place.apply(ordered.get(j)), place.apply(ordered.get(j - 1))); j--) {
                Detail moved = ordered.remove(j);
                ordered.add(j - 1, moved);
            }
        }
        return List.copyOf(ordered);
    }

    private static boolean isAbove(Point one, Point other) {
        if (Math.abs(one.y() - other.y()) <= SAME_HEIGHT_MM) {
            return one.x() < other.x() - 1e-9;
        }
        return one.y() > other.y();
    }
}
