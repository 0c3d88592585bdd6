package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;

/** What is cut of a half piece whose fold lies on y = 0, the piece above it. A mitre at the end of the fold may reach a hair beyond. */
final class FoldedOutline {

    /** How closely the lines of corners follow the curves, mm. */
    private static final double CLOSE_MM = 0.005;

    /** Corners so near to the fold lie on it, mm. */
    private static final double ON_FOLD_MM = 1e-6;

    private FoldedOutline() {}

    /** The half, nothing of it below the fold. */
    static Path half(Path line) {
        List<Point> corners = corners(line);
        corners.add(corners.get(0));
        return Path.through(corners.toArray(Point[]::new));
    }

    /** The half and its mirror image below the fold, as one. */
    static Path whole(Path line) {
        List<Point> corners = corners(line);
        int first = 0;
        int last = 0;
        for (int i = 0; i < corners.size(); i++) {
            if (corners.get(i).y() <= ON_FOLD_MM) {
                first = farther(corners, i, first, 1);
                last = farther(corners, i, last, -1);
            }
        }
        // Anticlockwise from the right end of the fold over the half to its left end, and back below.
        List<Point> whole = new ArrayList<>();
        for (int i = first; ; i = (i + 1) % corners.size()) {
            whole.add(corners.get(i));
            if (i == last) {
                break;
            }
        }
        for (int i = whole.size() - 2; i > 0; i--) {
            whole.add(new Point(whole.get(i).x(), -whole.get(i).y()));
        }
        whole.add(whole.get(0));
        return Path.through(whole.toArray(Point[]::new));
    }

    private static int farther(List<Point> corners, int i, int known, int way) {
        boolean knownOnFold = corners.get(known).y() <= ON_FOLD_MM;
        return !knownOnFold || way * (corners.get(i).x() - corners.get(known).x()) > 0 ? i : known;
    }

    private static List<Point> corners(Path line) {
        Bounds b = line.bounds();
        Path above = Path.through(
                new Point(b.minX() - 1, 0),
                new Point(b.maxX() + 1, 0),
                new Point(b.maxX() + 1, b.maxY() + 1),
                new Point(b.minX() - 1, b.maxY() + 1),
                new Point(b.minX() - 1, 0));
        Path largest = Region.within(line, CLOSE_MM).intersection(Region.within(above, 1)).outlines().stream()
                .max(Comparator.comparingDouble(Path::signedArea))
                .orElseThrow();
        List<Point> corners = new ArrayList<>();
        for (Point p : largest.flattened(CLOSE_MM)) {
            Point on = p.y() <= ON_FOLD_MM ? new Point(p.x(), 0) : p;
            if (corners.isEmpty() || !corners.get(corners.size() - 1).isNear(on, ON_FOLD_MM)) {
                corners.add(on);
            }
        }
        if (corners.get(0).isNear(corners.get(corners.size() - 1), ON_FOLD_MM)) {
            corners.remove(corners.size() - 1);
        }
        return corners;
    }
}
