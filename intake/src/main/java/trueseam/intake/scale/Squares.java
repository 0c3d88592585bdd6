package trueseam.intake.scale;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;

/** Upright rectangles of the size of a test square, drawn in one stroke or as four lines. */
final class Squares {

    private static final double LEAST_MM = 8;
    private static final double MOST_MM = 330;

    /** Sides that differ by more are no square, even on a stretched print. */
    private static final double SIDES = 1.12;

    private static final double CORNER_MM = 0.3;

    /** So many level or upright lines of a square's size are hatching, and no test square is to be found among them. */
    private static final int MOST_LINES = 500;

    private Squares() {}

    /** Every one, whatever its proportions; see {@link #isSquare}. */
    static List<Bounds> of(Drawing drawing) {
        List<Bounds> found = new ArrayList<>();
        List<Bounds> level = new ArrayList<>();
        List<Bounds> upright = new ArrayList<>();
        for (Stroke stroke : drawing.strokes()) {
            Path path = stroke.path();
            Bounds box = path.bounds();
            boolean fits =
                    LEAST_MM <= Math.max(box.width(), box.height()) && Math.max(box.width(), box.height()) <= MOST_MM;
            if (!fits || path.segments().size() > 60) {
                continue;
            }
            if (path.isClosed() && box.width() >= LEAST_MM && box.height() >= LEAST_MM) {
                double area = Math.abs(path.signedArea());
                if (Math.abs(area - box.width() * box.height()) < 1e-3 * area) {
                    add(found, box);
                }
            } else if (box.height() < CORNER_MM) {
                level.add(box);
            } else if (box.width() < CORNER_MM) {
                upright.add(box);
            }
        }
        ofLines(level, upright).forEach(box -> add(found, box));
        found.sort(Comparator.comparingDouble(Bounds::width));
        return found;
    }

    static boolean isSquare(Bounds box) {
        return box.width() < SIDES * box.height() && box.height() < SIDES * box.width();
    }

    private static void add(List<Bounds> found, Bounds box) {
        boolean known = found.stream()
                .anyMatch(f -> isNear(f.minX(), box.minX())
                        && isNear(f.minY(), box.minY())
                        && isNear(f.maxX(), box.maxX())
                        && isNear(f.maxY(), box.maxY()));
        if (!known && found.size() < MOST_LINES) {
            found.add(box);
        }
    }

    private static boolean isNear(double a, double b) {
        return Math.abs(a - b) < CORNER_MM;
    }

    /** Two level lines one above the other whose ends two upright ones join. */
    private static List<Bounds> ofLines(List<Bounds> level, List<Bounds> upright) {
        List<Bounds> found = new ArrayList<>();
        if (level.size() > MOST_LINES || upright.size() > MOST_LINES) {
            return found;
        }
        for (Bounds low : level) {
            for (Bounds high : level) {
                boolean above = high.minY() - low.minY() >= LEAST_MM
                        && isNear(low.minX(), high.minX())
                        && isNear(low.maxX(), high.maxX());
                if (above
                        && joined(upright, low.minX(), low.minY(), high.minY())
                        && joined(upright, low.maxX(), low.minY(), high.minY())) {
                    found.add(new Bounds(low.minX(), low.minY(), low.maxX(), high.minY()));
                }
            }
        }
        return found;
    }

    private static boolean joined(List<Bounds> upright, double x, double low, double high) {
        return upright.stream().anyMatch(u -> isNear(u.minX(), x) && isNear(u.minY(), low) && isNear(u.maxY(), high));
    }
}
