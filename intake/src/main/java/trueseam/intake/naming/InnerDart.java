package trueseam.intake.naming;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A dart drawn as two legs that meet inside.
 *
 * @param fromMm where the one leg leaves the outline, mm along it
 * @param toMm where the other one does; the mouth lies between, walked anticlockwise
 * @param apex its tip
 */
record InnerDart(double fromMm, double toMm, Point apex) {

    /** Legs are drawn to the line by hand or by a machine; a millimetre and a half is still meant to touch. */
    private static final double TOUCH_MM = 1.5;

    /** A mouth wider than this is no dart but a part of the piece. */
    private static final double WIDEST_MM = 120;

    /** Legs are sewn together: they differ by little. */
    private static final double LEGS_DIFFER = 0.12;

    /** Among more straight lines than this none are legs: it is hatching, and every pair would have to be looked at. */
    private static final int MOST_LEGS = 500;

    static List<InnerDart> of(Outline outline) {
        List<InnerDart> darts = new ArrayList<>();
        List<Path> single = new ArrayList<>();
        for (Path path : outline.inside()) {
            List<Point> corners = corners(path);
            if (corners.size() == 3) {
                add(darts, outline, corners.get(0), corners.get(1), corners.get(2));
            } else if (corners.size() == 2) {
                single.add(path);
            }
        }
        for (int i = 0; i < single.size() && single.size() <= MOST_LEGS; i++) {
            for (int j = i + 1; j < single.size(); j++) {
                meet(darts, outline, single.get(i), single.get(j));
            }
        }
        return darts;
    }

    private static List<Point> corners(Path path) {
        List<Point> corners = new ArrayList<>();
        corners.add(path.start());
        for (var segment : path.segments()) {
            corners.add(segment.end());
        }
        return corners;
    }

    private static void meet(List<InnerDart> darts, Outline outline, Path a, Path b) {
        for (Path p : List.of(a, a.reversed())) {
            for (Path q : List.of(b, b.reversed())) {
                if (p.end().isNear(q.start(), TOUCH_MM)) {
                    add(darts, outline, p.start(), p.end(), q.end());
                }
            }
        }
    }

    private static void add(List<InnerDart> darts, Outline outline, Point a, Point apex, Point b) {
        if (!outline.has(a, TOUCH_MM) || !outline.has(b, TOUCH_MM) || outline.has(apex, 4 * TOUCH_MM)) {
            return;
        }
        double one = a.distanceTo(apex);
        double other = b.distanceTo(apex);
        if (Math.abs(one - other) > LEGS_DIFFER * Math.max(one, other)) {
            return;
        }
        double at = outline.line().nearest(a).alongMm();
        double to = outline.line().nearest(b).alongMm();
        double around = outline.line().length();
        double mouth = ((to - at) % around + around) % around;
        InnerDart dart = mouth <= around / 2 ? new InnerDart(at, to, apex) : new InnerDart(to, at, apex);
        if (Math.min(mouth, around - mouth) <= WIDEST_MM
                && darts.stream().noneMatch(d -> d.apex.isNear(apex, TOUCH_MM))) {
            darts.add(dart);
        }
    }
}
